import type { Edit } from "../edit"

/** Takes sections out. The others keep their numbers: a printed map may already hang at the mirror. */
export const removeSections =
  (...ids: readonly string[]): Edit =>
  (plan) => ({ ...plan, sections: plan.sections.filter(({ id }) => !ids.includes(id)) })
