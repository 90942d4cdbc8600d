import { partingBehind } from "../../../../geometry/parting/parting"
import { type Edit, refuse } from "../../document/edit"
import { twinOf } from "../../document/pairs"
import { headOf } from "../../figures/measured"
import { addSections } from "../sections/addSections"
import { renewed } from "../sections/pieceOf"
import { pairOf, partingBeside } from "./pairBehind"

/** The same section again, so far behind the first that `gapMm` of hair lies between the two; behind one of a pair, a pair. */
export const repeatBehind =
  (id: string, gapMm: number): Edit =>
  (plan) => {
    const section = plan.sections.find((each) => each.id === id)
    if (!section) return plan
    const head = headOf(plan)
    const backMm = Math.max(section.depthMm.start, section.depthMm.end) + gapMm
    const behind = ({ parting }: typeof section) => {
      const made = partingBehind(head, parting, backMm)
      return "refused" in made ? null : made.parting
    }
    const parting = behind(section)
    if (!parting) return refuse({ code: "no-room-behind" })
    const row = { ...renewed(section, plan.sections), parting, twin: undefined }
    const twin = twinOf(section, plan)
    if (!twin) return addSections(row)(plan)
    const beside = partingBeside(section, twin, head, () => behind(twin))(parting)
    return beside
      ? addSections(...pairOf(row, beside, plan.sections))(plan)
      : refuse({ code: "no-room-on-other-side" })
  }
