import { partingBehind } from "../../../../geometry/parting/parting"
import type { Head } from "../../../../geometry/scalp/head"
import { onOtherSide } from "../../../../geometry/scalp/onOtherSide"
import { isFoil, type Section } from "../../../../geometry/section/section"
import { type Edit, refuse } from "../../document/edit"
import { freeId, freeMapNumber, withKnownMixes } from "../../document/newSection"
import type { Plan } from "../../document/schema"
import { headOf } from "../../figures/measured"
import { overlapsIn } from "../../figures/overlaps"
import { addSections } from "./addSections"

const stepMm = 2
const farthestMm = 140
/** Hair left between what is there and what is pasted behind it. */
const gapMm = 3

/**
 * Puts copies of sections where they were copied from when no one has that hair; otherwise all of them so far behind
 * that they take no hair of another. Pairs that were copied whole stay pairs; a mix that this plan lacks becomes its first.
 */
export const pasteSections =
  (copied: readonly Section[]): Edit =>
  (plan) => {
    const fresh = renewed(copied, plan)
    const head = headOf(plan)
    for (let mm = 0; mm <= farthestMm; mm += stepMm) {
      if (!isFree(movedBehind(fresh, mm, head), plan)) continue
      const apart = mm === 0 ? fresh : movedBehind(fresh, mm + gapMm, head)
      return addSections(...(isFree(apart, plan) ? apart : movedBehind(fresh, mm, head)))(plan)
    }
    return refuse({ code: "nowhere-to-paste" })
  }

function renewed(copied: readonly Section[], plan: Plan): Section[] {
  const made: Section[] = []
  const idOf = new Map<string, string>()
  for (const section of copied) {
    const id = freeId([...plan.sections, ...made])
    idOf.set(section.id, id)
    made.push(numbered({ ...section, id }, [...plan.sections, ...made], plan))
  }
  return made.map((section) => ({ ...section, twin: section.twin && idOf.get(section.twin) }))
}

function numbered(section: Section, sections: readonly Section[], { mixes }: Plan): Section {
  if (!isFoil(section)) return section
  return { ...withKnownMixes(section, mixes), mapNumber: freeMapNumber(sections) }
}

/** All sections moved back by so many mm, each of a pair as the mirror image of the other; none when one has no room. */
function movedBehind(sections: readonly Section[], mm: number, head: Head): Section[] {
  if (mm === 0) return [...sections]
  const moved = new Map<string, Section>()
  for (const section of sections) {
    const twin = moved.get(section.twin ?? "")
    const made = twin
      ? { parting: onOtherSide(head, twin.parting) }
      : partingBehind(head, section.parting, mm)
    if ("refused" in made) return []
    moved.set(section.id, { ...section, parting: made.parting })
  }
  return [...moved.values()]
}

function isFree(pasted: readonly Section[], plan: Plan): boolean {
  const ids = new Set(pasted.map(({ id }) => id))
  const shared = overlapsIn([...plan.sections, ...pasted], headOf(plan))
  return pasted.length > 0 && !shared.some(({ earlier, later }) => ids.has(later.id) && !ids.has(earlier.id))
}
