import { validateEdit } from "../../checks/validateEdit"
import type { Edit } from "../../document/edit"
import type { Plan } from "../../document/schema"
import { dividingOf, placeIn, workingSectionsOf } from "../../figures/workingSections"
import { byWorkingSection } from "../../figures/workingSectionsBelonging"

/** Gives a working section a name of its own; an empty one is the name by rule again. */
export const renameWorkingSection =
  (index: number, name: string): Edit =>
  (plan) =>
    withNamed(plan, (named) => named.with(index, { ...named[index], name: name.trim() }))

/** Works a working section earlier or later by so many places, and its foils with it. Map numbers stay. */
export const moveWorkingSection =
  (index: number, by: number): Edit =>
  (plan) => {
    const count = workingSectionsOf(plan).length
    const to = Math.max(0, Math.min(count - 1, index + by))
    if (to === index || !workingSectionsOf(plan)[index]) return plan
    const moved = withNamed(plan, (named) => named.toSpliced(index, 1).toSpliced(to, 0, named[index]))
    return "refused" in moved ? moved : sorted(moved)
  }

/** The order of application in the order of the working sections; within each it stays. */
const sorted = (plan: Plan): Plan => ({
  ...plan,
  sections: byWorkingSection(plan).flatMap((group) => group.sections),
})

type Named = NonNullable<Plan["workingSections"]>["named"]

/** Writes down every working section in the order they are worked, each with the name it was given. */
function withNamed(plan: Plan, change: (named: Named) => Named) {
  const dividing = dividingOf(plan)
  const named = workingSectionsOf(plan).map((working) => ({ at: placeIn(working), name: working.ownName }))
  return named.length === 0
    ? plan
    : validateEdit(plan, { ...plan, workingSections: { ...dividing, named: change(named) } })
}
