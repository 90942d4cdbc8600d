import { partingBehind } from "../../../geometry/parting"
import { isFoil } from "../../../geometry/section/section"
import type { Edit } from "../edit"
import { headOf } from "../measured"
import { freeId, freeMapNumber } from "../newSection"
import { addSections } from "./addSections"

/** The same section again, so far behind the first that `gapMm` of hair lies between the two. */
export const repeatBehind =
  (id: string, gapMm: number): Edit =>
  (plan) => {
    const section = plan.sections.find((each) => each.id === id)
    if (!section) return plan
    const depthMm = Math.max(section.depthMm.start, section.depthMm.end)
    const made = partingBehind(headOf(plan), section.parting, depthMm + gapMm)
    if ("refused" in made) return { refused: "There is no room for another behind this one." }
    const copy = { ...section, id: freeId(plan.sections), parting: made.parting }
    const numbered = isFoil(copy) ? { ...copy, mapNumber: freeMapNumber(plan.sections) } : copy
    return addSections(numbered)(plan)
  }
