import { coatsOf } from "../../../geometry/section/section"
import { bowlFigures } from "../../../presets/formula/bowlFigures"
import { gramsIn, type Service, type TimedFoil, type TimedMix } from "./scheduleInput"

/** A bowl before its time is known: which mix, and which foils in order it serves. */
export type BowlShare = { mix: TimedMix; foils: readonly TimedFoil[] }

/** The bowls in order of first use: as they were shared out, or else bowl after bowl of each mix filled in the order of the foils. */
export function shareBowls({ foils, mixes, bowls }: Service): BowlShare[] {
  const mixOf = new Map(mixes.map((mix) => [mix.id, mix]))
  return bowls ? sharedOut(foils, mixOf, bowls) : filled(foils, mixOf)
}

function sharedOut(
  foils: readonly TimedFoil[],
  mixOf: ReadonlyMap<string, TimedMix>,
  bowls: NonNullable<Service["bowls"]>,
): BowlShare[] {
  return bowls
    .map(({ mix, foils: ids }) => ({
      mix: known(mixOf, mix),
      foils: foils.filter(({ id }) => ids.includes(id)),
    }))
    .filter((bowl) => bowl.foils.length > 0)
    .sort((a, b) => foils.indexOf(a.foils[0]) - foils.indexOf(b.foils[0]))
}

function filled(foils: readonly TimedFoil[], mixOf: ReadonlyMap<string, TimedMix>): BowlShare[] {
  const bowls: { mix: TimedMix; foils: TimedFoil[]; filledG: number }[] = []
  const open = new Map<string, (typeof bowls)[number]>()
  const serve = (foil: TimedFoil, mix: string, wantedG: number) => {
    let bowl = open.get(mix)
    if (!bowl || foil.startsBowl || isFull(bowl, wantedG)) {
      bowl = { mix: known(mixOf, mix), foils: [], filledG: 0 }
      bowls.push(bowl)
      open.set(mix, bowl)
    }
    bowl.foils.push(foil)
    bowl.filledG += wantedG
  }
  for (const foil of foils) {
    if (!foil.roots) serve(foil, foil.mix, foil.productG.high)
    else for (const { mix } of coatsOf(foil)) serve(foil, mix, gramsIn(foil, mix)?.high ?? 0)
  }
  return bowls
}

const isFull = ({ mix, foils, filledG }: BowlShare & { filledG: number }, wantedG: number) =>
  foils.length >= bowlFigures.mostFoils.value || filledG + wantedG > mix.bowlG + 1e-9

function known(mixOf: ReadonlyMap<string, TimedMix>, id: string): TimedMix {
  const mix = mixOf.get(id)
  if (!mix) throw new Error(`Mix ${id} is used but is not in the service`)
  return mix
}
