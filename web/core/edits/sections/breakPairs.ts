import type { Edit } from "../../document/edit"
import { twinOf } from "../../document/pairs"
import { replaceEach } from "./replaceSections"

/** Breaks the pairs that sections belong to: from now on each side is changed by itself. */
export const breakPairs =
  (...ids: readonly string[]): Edit =>
  (plan) => {
    const paired = plan.sections
      .filter(({ id }) => ids.includes(id))
      .filter((section) => twinOf(section, plan))
    const both = paired.flatMap(({ id, twin }) => [id, twin ?? id])
    return replaceEach(both, (section) => ({ ...section, twin: undefined }))(plan)
  }
