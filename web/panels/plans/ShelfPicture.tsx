import { type RefObject, useEffect, useRef, useState } from "react"
import type { ShelfEntry } from "../../storage/records"
import { lookAtPlan } from "../../storage/shelfList"
import { PlanDrawing } from "../heads/PlanDrawing"
import { type PlanPicture, planPicture } from "../heads/planPicture"
import { desk } from "./shelfActions"

/** What lies on the head of a plan of the shelf, drawn once its row has come into sight. */
export function ShelfPicture({ entry: { id, savedAt } }: { entry: Pick<ShelfEntry, "id" | "savedAt"> }) {
  const ref = useRef<HTMLSpanElement>(null)
  const picture = usePicture(ref, id, savedAt)
  return (
    <span ref={ref} className="shelf-picture" aria-hidden="true">
      {picture && <PlanDrawing picture={picture} />}
    </span>
  )
}

/** Drawn anew when the plan has been written again. */
function usePicture(ref: RefObject<Element | null>, id: string, savedAt: string): PlanPicture | null {
  const [picture, setPicture] = useState<PlanPicture | null>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: another writing of the plan is another picture
  useEffect(() => {
    let isGone = false
    const draw = async () => {
      const plan = await lookAtPlan(desk.shelf, id).catch(() => null)
      if (plan && !isGone) setPicture(planPicture(plan))
    }
    const watcher = new IntersectionObserver((entries) => {
      if (!entries.some((entry) => entry.isIntersecting)) return
      watcher.disconnect()
      void draw()
    })
    if (ref.current) watcher.observe(ref.current)
    return () => {
      isGone = true
      watcher.disconnect()
    }
  }, [ref, id, savedAt])
  return picture
}
