import { isFoil } from "../../../geometry/section/section"
import type { Plan } from "../document/schema"
import { type Problem, problemAt } from "./problem"

/** What must hold between the parts of a plan: nothing named twice, every mix that is used listed, and twins that name each other. */
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
          problemAt(
            [...path.slice(0, -1), i, ...path.slice(-1)],
            `expected one of its own, but ${value} is taken in number ${first + 1} of the list`,
          ),
        ]
  })
}

function unknownMixes(mixes: Plan["mixes"], sections: Plan["sections"]): Problem[] {
  const known = mixes.map(({ id }) => id)
  return sections.flatMap((section, i) => {
    if (!isFoil(section) || known.includes(section.mix)) return []
    const sentence = `expected one of the mixes listed (${known.join(", ")}), found ${section.mix}`
    return [problemAt(["sections", i, "mix"], sentence)]
  })
}

function brokenPairs(sections: Plan["sections"]): Problem[] {
  const twins = new Map(sections.map(({ id, twin }) => [id, twin]))
  return sections.flatMap(({ id, twin }, i) => {
    const isWhole = twin === undefined || (twin !== id && twins.get(twin) === id)
    return isWhole ? [] : [problemAt(["sections", i, "twin"], twinSentence(id, twin, twins))]
  })
}

function twinSentence(id: string, twin: string, twins: ReadonlyMap<string, string | undefined>): string {
  const cure = `take "twin" out to break the pair`
  if (twin === id) return `expected another section, found itself; ${cure}`
  if (!twins.has(twin)) return `expected a section of this plan, found "${twin}"; ${cure}`
  const named = twins.get(twin)
  return `expected a section that names "${id}" back, but "${twin}" names ${named ? `"${named}"` : "none"}; ${cure}`
}
