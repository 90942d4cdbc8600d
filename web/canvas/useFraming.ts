import { useMemo } from "react"
import type { ViewName } from "../../geometry/surface/views"
import type { Plan } from "../core/document/schema"
import { viewFrame } from "../drawing/labelRings"
import type { Scene } from "../drawing/marks"
import { type Frame, fitsHairlineFrame, hairlineFrame, hasHairlineFrame } from "../drawing/workFrame"
import { useSession } from "../session/usePlan"

export type Framing = { frame: Frame; shown: "hairline" | "whole"; canChange: boolean }

/** How much of the head a pane shows. A plan that is opened chooses once, so that no stroke moves the page under the hand. */
export function useFraming(plan: Plan, name: ViewName, scene: Scene, enlarged: boolean): Framing {
  const chosen = useSession(({ framing }) => framing)
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is drawn later does not change the frame
  const fits = useMemo(() => fitsHairlineFrame(plan, name, scene), [plan.id, name])
  const { axes } = scene.head
  return useMemo(() => {
    const canChange = enlarged && hasHairlineFrame(name)
    const shown = canChange && (chosen === "hairline" || (chosen === "auto" && fits)) ? "hairline" : "whole"
    const frame = shown === "hairline" ? hairlineFrame(name, axes) : viewFrame(name, axes)
    return { frame, shown, canChange }
  }, [chosen, fits, name, axes, enlarged])
}
