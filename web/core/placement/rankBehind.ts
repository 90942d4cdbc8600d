import type { Head } from "../../../geometry/scalp/head"
import type { Section } from "../../../geometry/section/section"
import { placeOf } from "./places"

/**
 * Of sections of one kind at one place: which of them each is, counted from the hairline back, so that no two are
 * called the same. One that is alone has no rank.
 */
export function ranksBehind(sections: readonly Section[], head: Head): ReadonlyMap<string, number> {
  const alike = new Map<string, { id: string; behindMm: number }[]>()
  for (const section of sections) {
    const { behindMm } = head.hairline.coordinates(section.parting[section.parting.length >> 1])
    const name = JSON.stringify([section.kind, section.name ?? "", placeOf(section, head)])
    const others = alike.get(name) ?? []
    others.push({ id: section.id, behindMm })
    alike.set(name, others)
  }
  const ranks = new Map<string, number>()
  for (const group of alike.values()) {
    if (group.length < 2) continue
    group.sort((a, b) => a.behindMm - b.behindMm)
    for (const [i, { id }] of group.entries()) ranks.set(id, i + 1)
  }
  return ranks
}
