import { onOtherSide } from "../../../../geometry/scalp/onOtherSide"
import { validateEdit } from "../../checks/validateEdit"
import { type Edit, refuse } from "../../document/edit"
import { imageOf, twinOf } from "../../document/pairs"
import { sectionNameOf } from "../../document/sectionNameCode"
import { headOf } from "../../figures/measured"
import { renewed } from "./pieceOf"

/** Adds the same sections on the other side of the head, placed after all others in the same order, each a pair with its own. */
export const mirrorSections =
  (...ids: readonly string[]): Edit =>
  (plan) => {
    const named = plan.sections.filter(({ id }) => ids.includes(id))
    const single = named.filter((section) => !twinOf(section, plan))
    if (single.length === 0 && named.length > 0)
      return refuse({ code: "paired-already", section: sectionNameOf(named[0]) })
    const sections = [...plan.sections]
    for (const section of single) {
      const image = imageOf(section, renewed(section, sections), onOtherSide(headOf(plan), section.parting))
      sections[sections.indexOf(section)] = { ...section, twin: image.id }
      sections.push(image)
    }
    return validateEdit(plan, { ...plan, sections })
  }
