import type { Head } from "../../../geometry/scalp/head"
import { onOtherSide } from "../../../geometry/scalp/onOtherSide"
import { isFoil, type Section } from "../../../geometry/section/section"
import type { SurfacePath } from "../../../geometry/surface/surfacePath"
import type { Plan } from "./schema"

/**
 * A pair is a section and its image on the other side of the head, told by the hairline there, each of which names the other as its twin.
 * What is done to one is done to the other; its id, number, name and note are each one's own.
 */

export const twinOf = ({ twin }: Section, { sections }: Pick<Plan, "sections">): Section | undefined =>
  twin === undefined ? undefined : sections.find(({ id }) => id === twin)

/** A section as the image of another along a parting on its own side, with all that is its own. Points keep their order, so each end keeps its depth. */
export function imageOf(leader: Section, own: Section, parting: SurfacePath): Section {
  const image = { ...leader, id: own.id, note: own.note, twin: leader.id, parting }
  if (!isFoil(image)) return isFoil(own) ? image : { ...image, name: own.name }
  return isFoil(own) ? { ...image, mapNumber: own.mapNumber, name: own.name } : image
}

/**
 * The twin of a section that was changed: the same is done to it, and where its partner's parting, depth or side changed
 * it takes the mirror image of that. What did not change stays, for a twin may have been fitted to its own side.
 */
export function twinAfter(
  before: Section,
  after: Section,
  twin: Section,
  change: (section: Section) => Section,
  head: Head,
) {
  const { parting, depthMm, taken } = before
  return {
    ...change({ ...twin, parting, depthMm, taken }),
    note: twin.note,
    parting: after.parting === parting ? twin.parting : onOtherSide(head, after.parting),
    depthMm: after.depthMm === depthMm ? twin.depthMm : after.depthMm,
    taken: after.taken === taken ? twin.taken : after.taken,
  }
}

const ownFields: readonly string[] = ["id", "mapNumber", "name", "note", "twin"]

/** Whether a change reached anything that a pair has in common. */
export function isSharedChange(before: Section, after: Section): boolean {
  const was = new Map<string, unknown>(Object.entries(before))
  return Object.entries(after).some(
    ([field, value]) => !ownFields.includes(field) && value !== was.get(field),
  )
}

/** The sections with every pair broken whose two do not name each other: one of them is gone, or is a copy. */
export function wholePairs(sections: readonly Section[]): readonly Section[] {
  const twins = new Map(sections.map(({ id, twin }) => [id, twin]))
  const isBroken = ({ id, twin }: Section) => twin !== undefined && (twin === id || twins.get(twin) !== id)
  return sections.some(isBroken)
    ? sections.map((section) => (isBroken(section) ? { ...section, twin: undefined } : section))
    : sections
}
