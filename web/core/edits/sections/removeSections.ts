import type { Edit } from "../../document/edit"
import { wholePairs } from "../../document/pairs"

/** Takes sections out. The others keep their numbers: a printed map may already hang at the mirror. A twin left behind is single. */
export const removeSections =
  (...ids: readonly string[]): Edit =>
  (plan) => ({ ...plan, sections: wholePairs(plan.sections.filter(({ id }) => !ids.includes(id))) })
