import { spotsOf } from "../../../geometry/placing/spotOf"
import type { Head } from "../../../geometry/scalp/head"
import { isFoil, type Section } from "../../../geometry/section/section"
import type { TechniqueSection } from "../../../presets/techniques/technique"
import { valuesOf } from "../kinds/kindRecords"

/**
 * Sections of a plan as those of a technique: told by the hairline of their head, as they lie there, and without what
 * belongs to the plan or its client: numbers, mixes (that of the roots too) and notes. Two that are a pair stay one.
 */
export function captureSections(sections: readonly Section[], head: Head): TechniqueSection[] {
  const pairs = pairNumbers(sections)
  return sections.map((section) => ({
    kind: section.kind,
    parting: { run: "through", spots: spotsOf(head, section.parting) },
    taken: section.taken,
    depthMm: section.depthMm,
    single: true,
    ...(pairs.has(section.id) ? { pair: pairs.get(section.id) } : {}),
    ...valuesOf(section),
    ...(isFoil(section) ? { treatment: treatmentOf(section) } : { name: section.name }),
  }))
}

/** The pairs of which both are there, counted from 1 in the order of application. */
function pairNumbers(sections: readonly Section[]): ReadonlyMap<string, number> {
  const ids = new Set(sections.map(({ id }) => id))
  const numbers = new Map<string, number>()
  for (const { id, twin } of sections) {
    if (twin === undefined || !ids.has(twin)) continue
    numbers.set(id, numbers.get(twin) ?? Math.max(0, ...numbers.values()) + 1)
  }
  return numbers
}

function treatmentOf(section: Extract<Section, { mix: string }>) {
  const { rootDistanceMm, strand, faces, carrier, elevationDeg, overDirectionDeg, foilLie } = section
  return { rootDistanceMm, strand, faces, carrier, elevationDeg, overDirectionDeg, foilLie }
}
