import {
  type Consultation,
  type HairState,
  type StrandPart,
  strandParts,
  zoneNames,
} from "../document/consultation"
import { historyWords, partWords, zoneWords } from "./hairTerms"
import { joinWords } from "./joinWords"
import { alikeZones } from "./strandPlaces"

/** What is written down of the hair, a sentence for zones that are alike. */
export const hairWords = (hair: Consultation["hair"]): string[] =>
  alikeZones(hair).flatMap(({ zones, strand }) => {
    const told = strandWords(strand)
    if (told === "") return []
    const [first, ...others] = zones.map((zone) => zoneWords[zone])
    const named = joinWords([first, ...others.map((other) => other.toLowerCase())])
    const where = zones.length === zoneNames.length ? "All over" : named
    return [`${where}: ${told}.`]
  })

/** Parts one after the other that are alike share their words. */
function strandWords(strand: Partial<Record<StrandPart, HairState>>): string {
  const runs: { parts: StrandPart[]; words: string }[] = []
  for (const part of strandParts) {
    const words = stateWords(strand[part])
    const last = runs.at(-1)
    if (last?.words === words) last.parts.push(part)
    else runs.push({ parts: [part], words })
  }
  return runs
    .filter(({ words }) => words !== "")
    .map(({ parts, words }) => `${partsName(parts)} ${words}`)
    .join("; ")
}

const partsName = (parts: readonly StrandPart[]) =>
  parts.length === strandParts.length
    ? "root to ends"
    : parts.map((part) => partWords[part].toLowerCase()).join(" and ")

function stateWords(state: HairState | undefined): string {
  if (!state) return ""
  const { level, history, porosity, stretch } = state
  return [
    ...(level === null ? [] : [`level ${level}`]),
    ...(history?.length === 0
      ? ["never treated"]
      : (history ?? []).map((kind) => historyWords[kind].toLowerCase())),
    ...(porosity === null ? [] : [`porosity ${porosity}`]),
    ...(stretch === null ? [] : [stretch.replaceAll("-", " ")]),
  ].join(", ")
}
