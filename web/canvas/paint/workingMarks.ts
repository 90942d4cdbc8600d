import { useEffect, useState } from "react"
import { useSession } from "../../session/usePlan"

/** How working sections are drawn: fetched when a plan has some or the hand is about to make one, not before. */
export type WorkingMarks = typeof import("../../drawing/workingSectionsMarks") &
  typeof import("../../drawing/workingTints")

const fetchMarks = (): Promise<WorkingMarks> =>
  Promise.all([import("../../drawing/workingSectionsMarks"), import("../../drawing/workingTints")]).then(
    ([lines, tints]) => ({ ...lines, ...tints }),
  )

let fetched: WorkingMarks | null = null

export function useWorkingMarks(isDivided: boolean): WorkingMarks | null {
  const [marks, setMarks] = useState(fetched)
  const isWanted = useSession(({ tool }) => tool === "divide") || isDivided
  useEffect(() => {
    if (isWanted && !marks)
      void fetchMarks().then((ready) => {
        fetched = ready
        setMarks(ready)
      })
  }, [isWanted, marks])
  return marks
}
