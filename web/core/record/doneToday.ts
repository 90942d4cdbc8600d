import { type Foil, type FoilKind, isFoil } from "../../../geometry/section/section"
import { tonersOfPlan } from "../bowls/toners"
import { foilRecords } from "../chair/chairRecord"
import { chairOfRecord } from "../chair/liveService"
import type { Mix, Plan } from "../document/schema"
import { foilCount } from "../figures/foilCount"
import type { Piece } from "../kinds/kindRecord"
import { foilKinds, pieceOf } from "../kinds/kindRecords"
import { mixesUsed } from "../schedule/mixesUsed"
import { type FoilPlace, placesOf } from "../schedule/placesOf"
import { dayIn } from "../text/zonedTime"
import { bowlsMixed, tonersUsed } from "./asMixed"

/** What is told to the client of the hair: as done, or, of a plan that was never carried out, as planned. */
export type DoneCode =
  | {
      code: "foils"
      count: number
      piece: Piece
      places: readonly FoilPlace[]
      kinds: readonly { kind: FoilKind; count: number }[]
    }
  | { code: "lightened"; products: readonly string[] }
  | { code: "toned"; products: readonly string[] }

export type DoneToday = { day: string; isDone: boolean; lines: readonly DoneCode[]; isToned: boolean }

/** As it went at the chair where that was written down, on the day the clock of `zone` showed; else as it is planned. */
export function doneToday(plan: Plan, zone: string): DoneToday {
  const foils = foilsDone(plan)
  const toners = namesOf(tonersUsed(plan) ?? tonersPlanned(plan))
  const products = namesOf(mixesUsed(plan.mixes, foils).flatMap((mix) => asWeighed(mix, plan)))
  return {
    day: dayOfService(plan, zone),
    isDone: plan.service !== undefined,
    isToned: toners.length > 0,
    lines: [
      ...(foils.length > 0 ? [foilsLine(foils, plan)] : []),
      ...(products.length > 0 ? [{ code: "lightened" as const, products }] : []),
      ...(toners.length > 0 ? [{ code: "toned" as const, products: toners }] : []),
    ],
  }
}

/** The day of the last service as the wall calendar of `zone` has it; of a plan that was never carried out, its own. */
export const dayOfService = ({ service, date }: Pick<Plan, "service" | "date">, zone: string): string =>
  service ? dayIn(zone, Date.parse(service.startedAt)) : date

/** The bowls that were mixed, whatever the plan calls the mix since; else the mix itself. */
function asWeighed(mix: Mix, plan: Plan): readonly { product: string }[] {
  const mixed = bowlsMixed(plan, mix.id) ?? []
  return mixed.length > 0 ? mixed : [mix]
}

const tonersPlanned = (plan: Plan) =>
  tonersOfPlan(plan).flatMap(({ bowl, choice }) => (bowl && choice ? choice : []))

const namesOf = (named: readonly { product: string | null }[]) => [
  ...new Set(named.map(({ product }) => (product ?? "").trim()).filter(Boolean)),
]

/** The foils that went on, where that was written down; else all that are planned. */
export function foilsDone({ sections, service }: Plan): Foil[] {
  const foils = sections.filter(isFoil)
  if (!service) return foils
  const records = foilRecords(chairOfRecord(service))
  return foils.filter(({ id }) => (records.get(id)?.onAtMs ?? null) !== null)
}

const foilsLine = (foils: readonly Foil[], plan: Plan): DoneCode => ({
  code: "foils",
  count: foilCount(foils, plan),
  piece: pieceOf(foils),
  places: placesOf(foils, plan),
  kinds: foilKinds.flatMap((kind) => {
    const count = foils.filter((foil) => foil.kind === kind).length
    return count > 0 ? [{ kind, count }] : []
  }),
})
