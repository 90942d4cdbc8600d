import { isFoil } from "../../geometry/section/section"
import { type Problem, problemAt } from "./problem"
import type { Plan } from "./schema"

/** What must hold between the parts of a plan: nothing named twice, and every mix that is used listed. */
export function planRules(plan: Plan): Problem[] {
  const foils = plan.sections.map((section) => (isFoil(section) ? section : null))
  return [
    ...repeated(plan.mixes, (mix) => mix.id, "mixes", "id", "expected a letter of its own"),
    ...repeated(plan.sections, (section) => section.id, "sections", "id", "expected an id of its own"),
    ...repeated(foils, (foil) => foil?.mapNumber, "sections", "mapNumber", "expected a number of its own"),
    ...unknownMixes(plan),
  ]
}

function repeated<T>(
  items: readonly T[],
  keyOf: (item: T) => string | number | undefined,
  list: string,
  field: string,
  expected: string,
): Problem[] {
  const firstWith = new Map<string | number, number>()
  return items.flatMap((item, i) => {
    const key = keyOf(item)
    if (key === undefined) return []
    const first = firstWith.get(key)
    if (first === undefined) firstWith.set(key, i)
    return first === undefined
      ? []
      : [problemAt([list, i, field], `${expected}, found ${key} as in number ${first + 1} of the list`)]
  })
}

function unknownMixes({ mixes, sections }: Plan): Problem[] {
  const known = mixes.map(({ id }) => id)
  return sections.flatMap((section, i) =>
    isFoil(section) && !known.includes(section.mix)
      ? [
          problemAt(
            ["sections", i, "mix"],
            `expected one of the mixes listed (${known.join(", ")}), found ${section.mix}`,
          ),
        ]
      : [],
  )
}
