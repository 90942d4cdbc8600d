import { useEffect, useState } from "react"
import { useSession } from "../plan/usePlan"

/** How working sections are drawn: fetched when a plan has some or the hand is about to make one, not before. */
export type WorkingMarks = typeof import("../plan/workingSectionsMarks")

let fetched: WorkingMarks | null = null

export function useWorkingMarks(isDivided: boolean): WorkingMarks | null {
  const [marks, setMarks] = useState(fetched)
  const isWanted = useSession(({ tool }) => tool === "divide") || isDivided
  useEffect(() => {
    if (isWanted && !marks)
      void import("../plan/workingSectionsMarks").then((module) => {
        fetched = module
        setMarks(module)
      })
  }, [isWanted, marks])
  return marks
}
