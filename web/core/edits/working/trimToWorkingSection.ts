import type { Section } from "../../../../geometry/section/section"
import { lengthMm } from "../../../../geometry/surface/surfacePath"
import { cutsOf, type PartingCut } from "../../../../geometry/working/workingSectionCuts"
import { validateEdit } from "../../checks/validateEdit"
import { type Edit, refuse } from "../../document/edit"
import type { Plan } from "../../document/schema"
import { sectionNameOf } from "../../document/sectionNameCode"
import { headOf } from "../../figures/measured"
import { divisionOf } from "../../figures/workingSections"
import { crossingOf, homeOf } from "../../figures/workingSectionsBelonging"
import { pieceOf, renewed } from "../sections/pieceOf"
import { replaceSections } from "../sections/replaceSections"

/** Cuts sections at the dividing partings they cross and keeps what lies in the working section of most of their hair. */
export const trimToWorkingSection =
  (ids: readonly string[]): Edit =>
  (plan) => {
    const crossing = crossingAmong(ids, plan)
    const along = crossing.find((section) => partsOf(section, plan).length < 2)
    if (along) return refuse({ code: "divider-runs-along", section: sectionNameOf(along) })
    return replaceSections(
      crossing.map(({ id }) => id),
      (section) => trimmed(section, plan),
    )(plan)
  }

/** Cuts sections at the dividing partings they cross and keeps every part, each as a section of its own. */
export const splitAtWorkingPartings =
  (ids: readonly string[]): Edit =>
  (plan) => {
    const crossing = crossingAmong(ids, plan)
    const along = crossing.find((section) => partsOf(section, plan).length < 2)
    if (along) return refuse({ code: "divider-runs-along", section: sectionNameOf(along) })
    let after: readonly Section[] = plan.sections
    for (const section of crossing)
      after = after.flatMap((each) => (each === section ? split(section, plan, after) : [each]))
    return validateEdit(plan, { ...plan, sections: after })
  }

/** Lets sections lie in two working sections: nothing is said of it any more. */
export const letCross = (ids: readonly string[]): Edit =>
  replaceSections(ids, (section) => ({ ...section, mayCross: true }))

const crossingAmong = (ids: readonly string[], plan: Plan) =>
  plan.sections.filter((section) => ids.includes(section.id) && crossingOf(section, plan))

function trimmed(section: Section, plan: Plan): Section {
  const home = homeOf(section, plan)?.areaIndex
  const inside = partsOf(section, plan).filter(({ area }) => area === home)
  const longest = inside.reduce((best, part) => (part.to - part.from > best.to - best.from ? part : best))
  return pieceOf(section, longest, headOf(plan))
}

/** The part with most hair keeps the section's id and number; the others come after it with new ones. No part has a twin. */
function split(section: Section, plan: Plan, sections: readonly Section[]): Section[] {
  const parts = partsOf(section, plan)
  const longest = parts.reduce((best, part) => (part.to - part.from > best.to - best.from ? part : best))
  const made: Section[] = []
  for (const part of parts) {
    const piece = { ...pieceOf(section, part, headOf(plan)), twin: undefined }
    made.push(part === longest ? piece : renewed(piece, [...sections, ...made]))
  }
  return made
}

/** A shorter part than this stays with the one before it, mm. */
const shortestMm = 6

/** The parts of a section between the dividing partings, none too short to be parted. */
function partsOf(section: Section, plan: Plan): PartingCut[] {
  const head = headOf(plan)
  const least = shortestMm / lengthMm(head.surface, section.parting)
  const parts: PartingCut[] = []
  for (const cut of cutsOf(section, head, divisionOf(plan))) {
    const before = parts.at(-1)
    const isShort = cut.to - cut.from < least
    if (before && (isShort || before.area === cut.area)) before.to = cut.to
    else if (before && before.to - before.from < least) Object.assign(before, { area: cut.area, to: cut.to })
    else parts.push({ ...cut })
  }
  return parts
}
