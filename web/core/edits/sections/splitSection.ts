import { onOtherSide } from "../../../../geometry/scalp/onOtherSide"
import { foilsWide } from "../../../../geometry/section/measureSection"
import { isFoil, type Section } from "../../../../geometry/section/section"
import { validateEdit } from "../../checks/validateEdit"
import { type Edit, refuse } from "../../document/edit"
import { imageOf, twinOf } from "../../document/pairs"
import type { Plan } from "../../document/schema"
import { figuresFor } from "../../figures/figuresFor"
import { figuresOf, headOf } from "../../figures/measured"
import { pieceOf, renewed } from "./pieceOf"

/** How many foils lie side by side under a section; 1 where its foil is wide enough, or where it has none. */
export const foilsBeside = (section: Section, plan: Plan): number =>
  isFoil(section) && section.carrier.kind === "foil"
    ? foilsWide(figuresOf(section, plan).partingMm, section.carrier.widthMm, figuresFor(section, plan))
    : 1

/**
 * Cuts a section that is wider than its foil into as few even parts as fit one foil each, and its twin with it. The
 * first part keeps the number; the others go on right after it under new ones.
 */
export const splitSection =
  (id: string): Edit =>
  (plan) => {
    const section = plan.sections.find((each) => each.id === id)
    if (!section) return plan
    if (foilsBeside(section, plan) < 2) return refuse({ code: "one-foil-does" })
    const pieces = fittingPieces(section, plan)
    const parts = asSections(section, pieces, plan.sections)
    const twin = twinOf(section, plan)
    if (!twin) return validateEdit(plan, { ...plan, sections: inPlaceOf(plan.sections, section, parts) })
    const sections = inPlaceOf(plan.sections, section, parts)
    const images = asSections(
      twin,
      parts.map((part) => imageOf(part, twin, onOtherSide(headOf(plan), part.parting))),
      sections,
    )
    const paired = parts.map((part, i) => ({ ...part, twin: images[i].id }))
    const others = images.map((image, i) => ({ ...image, twin: parts[i].id }))
    const first = inPlaceOf(plan.sections, section, paired)
    return validateEdit(plan, { ...plan, sections: inPlaceOf(first, twin, others) })
  }

/** Even parts of a parting, one more than were needed when a part still is a hair too wide. */
function fittingPieces(section: Section, plan: Plan): Section[] {
  const head = headOf(plan)
  for (let count = foilsBeside(section, plan); ; count++) {
    const pieces = Array.from({ length: count }, (_, i) =>
      pieceOf(section, { from: i / count, to: (i + 1) / count }, head),
    )
    if (pieces.every((piece) => foilsBeside(piece, plan) === 1)) return pieces
  }
}

/** The first part under the id and number of the whole, the others under new ones. */
function asSections(whole: Section, pieces: readonly Section[], sections: readonly Section[]): Section[] {
  const made: Section[] = []
  for (const piece of pieces)
    made.push(made.length === 0 ? { ...piece, id: whole.id } : renewed(piece, [...sections, ...made]))
  return made
}

const inPlaceOf = (sections: readonly Section[], whole: Section, parts: readonly Section[]) =>
  sections.flatMap((section) => (section.id === whole.id ? parts : [section]))
