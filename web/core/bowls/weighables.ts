import { isFoil } from "../../../geometry/section/section"
import type { Plan } from "../document/schema"
import { mixesOfPlan } from "./mixesOfPlan"

/** A bowl, or one foil, that can be put on the scale: which foils, of which product. */
export type Weighable = { key: string; name: string; product: string; ids: readonly string[] }

/** The bowls of a plan in the order they are mixed, then each foil by itself. */
export function weighables(plan: Plan): Weighable[] {
  const mixes = mixesOfPlan(plan)
  const foils = plan.sections.filter(isFoil)
  const numbersOf = (ids: readonly string[]) =>
    foils.filter(({ id }) => ids.includes(id)).map(({ mapNumber }) => mapNumber)
  const bowls = mixes.flatMap(({ mix, made }) =>
    (made?.bowls ?? []).map((bowl, index) => {
      const numbers = numbersOf(bowl.sections)
      return {
        key: `${mix.id}${index}`,
        name: `Mix ${mix.id}, bowl ${index + 1}: ${numbers.length === 1 ? "foil" : "foils"} ${numbers.join(", ")}`,
        product: mix.product,
        ids: bowl.sections,
      }
    }),
  )
  const single = foils.map(({ id, mapNumber, mix }) => ({
    key: id,
    name: `Foil ${mapNumber} by itself`,
    product: mixes.find((each) => each.mix.id === mix)?.mix.product ?? "",
    ids: [id],
  }))
  return [...bowls, ...single]
}
