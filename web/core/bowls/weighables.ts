import { type CoatPart, coatsOf, isFoil } from "../../../geometry/section/section"
import type { Plan } from "../document/schema"
import { mixesOfPlan } from "./mixesOfPlan"

/** What can be put on the scale: a bowl of a mix, the first being 1, with the foils it serves; or one foil. */
export type WeighableCode =
  | { code: "bowl"; mix: string; bowl: number; foils: readonly number[] }
  | { code: "foil"; foil: number }
  /** One of the two mixes along the strand of a foil. */
  | { code: "coat"; foil: number; part: CoatPart; mix: string }

/** A bowl before and after what it goes on: which foils, in which mix, of which product. */
export type Weighable = {
  key: string
  name: WeighableCode
  mix: string
  product: string
  ids: readonly string[]
}

/** The bowls of a plan in the order they are mixed, then each foil by itself, once for each mix on it. */
export function weighables(plan: Plan): Weighable[] {
  const mixes = mixesOfPlan(plan)
  const foils = plan.sections.filter(isFoil)
  const numbersOf = (ids: readonly string[]) =>
    foils.filter(({ id }) => ids.includes(id)).map(({ mapNumber }) => mapNumber)
  const bowls = mixes.flatMap(({ mix, made }) =>
    (made?.bowls ?? []).map((bowl, index) => ({
      key: `${mix.id}${index}`,
      name: { code: "bowl" as const, mix: mix.id, bowl: index + 1, foils: numbersOf(bowl.sections) },
      mix: mix.id,
      product: mix.product,
      ids: bowl.sections,
    })),
  )
  const single = foils.flatMap((foil) =>
    coatsOf(foil).map(
      ({ part, mix }): Weighable => ({
        key: part === "whole" ? foil.id : `${foil.id} ${part}`,
        name:
          part === "whole"
            ? { code: "foil", foil: foil.mapNumber }
            : { code: "coat", foil: foil.mapNumber, part, mix },
        mix,
        product: mixes.find((each) => each.mix.id === mix)?.mix.product ?? "",
        ids: [foil.id],
      }),
    ),
  )
  return [...bowls, ...single]
}
