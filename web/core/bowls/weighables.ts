import { isFoil } from "../../../geometry/section/section"
import type { Plan } from "../document/schema"
import { mixesOfPlan } from "./mixesOfPlan"

/** What can be put on the scale: a bowl of a mix, the first being 1, with the foils it serves; or one foil. */
export type WeighableCode =
  | { code: "bowl"; mix: string; bowl: number; foils: readonly number[] }
  | { code: "foil"; foil: number }

/** A bowl, or one foil, that can be put on the scale: which foils, of which product. */
export type Weighable = { key: string; name: WeighableCode; product: string; ids: readonly string[] }

/** The bowls of a plan in the order they are mixed, then each foil by itself. */
export function weighables(plan: Plan): Weighable[] {
  const mixes = mixesOfPlan(plan)
  const foils = plan.sections.filter(isFoil)
  const numbersOf = (ids: readonly string[]) =>
    foils.filter(({ id }) => ids.includes(id)).map(({ mapNumber }) => mapNumber)
  const bowls = mixes.flatMap(({ mix, made }) =>
    (made?.bowls ?? []).map((bowl, index) => ({
      key: `${mix.id}${index}`,
      name: { code: "bowl" as const, mix: mix.id, bowl: index + 1, foils: numbersOf(bowl.sections) },
      product: mix.product,
      ids: bowl.sections,
    })),
  )
  const single = foils.map(({ id, mapNumber, mix }) => ({
    key: id,
    name: { code: "foil" as const, foil: mapNumber },
    product: mixes.find((each) => each.mix.id === mix)?.mix.product ?? "",
    ids: [id],
  }))
  return [...bowls, ...single]
}
