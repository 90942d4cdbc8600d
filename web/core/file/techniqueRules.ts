import type { Technique } from "../../../presets/techniques/technique"
import { problemAt } from "../checks/problem"
import type { Problem } from "../fields/problem"

/** What must hold between the sections of a technique: a pair number is borne by two, both of them single. */
export const techniqueRules = ({ sections }: Pick<Technique, "sections">): Problem[] =>
  sections.flatMap(({ pair, single }, i) => {
    if (pair === undefined) return []
    const bearers = sections.filter((each) => each.pair === pair).length
    if (bearers === 2 && single) return []
    const place = ["sections", i, "pair"]
    return [
      problemAt(
        place,
        bearers === 2 ? { code: "pair-not-single" } : { code: "pair-of-one", pair, found: bearers },
      ),
    ]
  })
