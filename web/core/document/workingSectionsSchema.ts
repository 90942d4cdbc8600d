import { id, line, list, point } from "../fields/fields"
import { counts, letters } from "../fields/limits"
import { z } from "../fields/zod"

/** How the head is divided before work begins, as it is written to a file. The working sections themselves are derived. */
export const workingSectionsSchema = z.strictObject({
  /** Partings that take no hair, from edge to edge: the hairline, or another of them. */
  dividers: list(
    z.strictObject({ id, parting: list(point, counts.partingPoints, "points") }),
    counts.dividers,
    "dividers",
  ),
  /** Working sections by a place in each, in the order they are worked; an empty name is the one by rule. */
  named: list(
    z.strictObject({ at: point, name: line(letters.name) }),
    counts.workingSections,
    "working-sections",
  ),
})

export type WorkingSections = Readonly<z.infer<typeof workingSectionsSchema>>
export type Divider = WorkingSections["dividers"][number]
