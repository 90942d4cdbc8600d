import type { Technique } from "../../../presets/techniques/technique"
import { type Problem, problemAt } from "../checks/problem"

/** What must hold between the sections of a technique: a pair number is borne by two, both of them single. */
export const techniqueRules = ({ sections }: Pick<Technique, "sections">): Problem[] =>
  sections.flatMap(({ pair, single }, i) => {
    if (pair === undefined) return []
    const bearers = sections.filter((each) => each.pair === pair).length
    if (bearers === 2 && single) return []
    const fault =
      bearers === 2
        ? 'expected "single": true beside it'
        : `expected two sections that bear ${pair}, found ${bearers}`
    return [problemAt(["sections", i, "pair"], `${fault}; take "pair" out to lay the section by itself`)]
  })
