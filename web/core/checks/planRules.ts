import { isFoil, rootsOf } from "../../../geometry/section/section"
import type { Plan } from "../document/schema"
import type { FieldCode, Problem } from "../fields/problem"
import { problemAt } from "./problem"

/** What must hold between the parts of a plan: nothing named twice, every mix that is used listed, no mix twice on a strand, and twins that name each other. */
export const planRules = ({ mixes, sections, workingSections }: Plan): Problem[] => [
  ...repeated(
    ["mixes", "id"],
    mixes.map(({ id }) => id),
  ),
  ...repeated(
    ["sections", "id"],
    sections.map(({ id }) => id),
  ),
  ...repeated(
    ["sections", "mapNumber"],
    sections.map((section) => (isFoil(section) ? section.mapNumber : null)),
  ),
  ...repeated(["workingSections", "dividers", "id"], workingSections?.dividers.map(({ id }) => id) ?? []),
  ...unknownMixes(mixes, sections),
  ...rootsFaults(sections),
  ...brokenPairs(sections),
]

function repeated(path: readonly string[], values: readonly (string | number | null)[]) {
  const firstWith = new Map<string | number, number>()
  return values.flatMap((value, i): Problem[] => {
    if (value === null) return []
    const first = firstWith.get(value)
    if (first === undefined) firstWith.set(value, i)
    return first === undefined
      ? []
      : [
          problemAt([...path.slice(0, -1), i, ...path.slice(-1)], {
            code: "taken",
            value,
            firstPlace: first + 1,
          }),
        ]
  })
}

function unknownMixes(mixes: Plan["mixes"], sections: Plan["sections"]): Problem[] {
  const known = mixes.map(({ id }) => id)
  return sections.flatMap((section, i) => {
    if (!isFoil(section)) return []
    const { mix } = section
    const roots = rootsOf(section)
    const unknown = (path: readonly string[], letter: string) =>
      known.includes(letter)
        ? []
        : [problemAt(["sections", i, ...path], { code: "unknown-mix" as const, known, mix: letter })]
    return [...unknown(["mix"], mix), ...(roots ? unknown(["roots", "mix"], roots.mix) : [])]
  })
}

/** Roots in a mix of their own reach past where product begins, and another mix follows. */
const rootsFaults = (sections: Plan["sections"]): Problem[] =>
  sections.flatMap((section, i) => {
    const roots = isFoil(section) && rootsOf(section)
    if (!roots) return []
    const { mix, rootDistanceMm: startMm } = section
    const at = ["sections", i, "roots"]
    if (roots.toMm <= startMm)
      return [problemAt([...at, "toMm"], { code: "no-roots", startMm, toMm: roots.toMm })]
    if (roots.afterMin && roots.first === "roots")
      return [problemAt([...at, "afterMin"], { code: "roots-first-later", afterMin: roots.afterMin })]
    return roots.mix === mix ? [problemAt([...at, "mix"], { code: "one-mix-twice", mix })] : []
  })

function brokenPairs(sections: Plan["sections"]): Problem[] {
  const twins = new Map(sections.map(({ id, twin }) => [id, twin]))
  return sections.flatMap(({ id, twin }, i) => {
    const isWhole = twin === undefined || (twin !== id && twins.get(twin) === id)
    return isWhole ? [] : [problemAt(["sections", i, "twin"], twinFault(id, twin, twins))]
  })
}

function twinFault(id: string, twin: string, twins: ReadonlyMap<string, string | undefined>): FieldCode {
  if (twin === id) return { code: "twin-of-itself" }
  if (!twins.has(twin)) return { code: "twin-unknown", twin }
  return { code: "twin-of-another", id, twin, named: twins.get(twin) ?? null }
}
