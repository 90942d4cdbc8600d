import {
  type Consultation,
  type HairState,
  type StrandPart,
  strandParts,
  type Zone,
} from "../document/consultation"
import { alikeZones } from "./strandPlaces"

/** Parts of a strand one after the other that are alike, and what was recorded of them. */
export type HairRun = { parts: readonly StrandPart[]; state: HairState }
/** Zones whose hair was recorded alike. */
export type ZoneHair = { zones: readonly Zone[]; runs: readonly HairRun[] }

/** What is recorded of the hair: zones that are alike together, and along the strand what is alike. */
export const hairRuns = (hair: Consultation["hair"]): ZoneHair[] =>
  alikeZones(hair)
    .map(({ zones, strand }) => ({ zones, runs: runsOf(strand) }))
    .filter(({ runs }) => runs.length > 0)

function runsOf(strand: Partial<Record<StrandPart, HairState>>): HairRun[] {
  const runs: { parts: StrandPart[]; key: string; state: HairState | undefined }[] = []
  for (const part of strandParts) {
    const state = strand[part]
    const key = keyOf(state)
    const last = runs.at(-1)
    if (last?.key === key) last.parts.push(part)
    else runs.push({ parts: [part], key, state })
  }
  return runs.flatMap(({ parts, key, state }) =>
    state && key !== keyOf(undefined) ? [{ parts, state }] : [],
  )
}

const keyOf = (state: HairState | undefined) =>
  JSON.stringify([
    state?.level ?? null,
    state?.history ?? null,
    state?.porosity ?? null,
    state?.stretch ?? null,
  ])
