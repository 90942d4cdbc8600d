import type { Comparison } from "../compare/compare"
import { criteria } from "../compare/differences"
import { csvLine } from "../text/csvCell"

/** What one learner's plan came to. */
export type Marked = { name: string; file: string; comparison: Comparison }

/** The table of a class: one line a learner, how many sections meet each criterion and of how many; never one number alone. */
export function classTableText(learners: readonly Marked[]): string {
  const heading = [
    "name",
    "file",
    "mirrored",
    "sections",
    "matched",
    "missing",
    "extra",
    "no_room",
    ...criteria.flatMap((criterion) => [`${criterion}_met`, `${criterion}_of`]),
  ]
  return [csvLine(heading), ...learners.map(lineOf)].join("")
}

const lineOf = ({ name, file, comparison }: Marked) =>
  csvLine([
    name,
    file,
    comparison.isMirrored ? "yes" : "no",
    comparison.model.length,
    comparison.pairs.length,
    comparison.missing.length,
    comparison.extra.length,
    comparison.noRoom,
    ...comparison.score.flatMap(({ met, of }) => [met, of]),
  ])
