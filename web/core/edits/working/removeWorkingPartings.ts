import { dividerFault } from "../../checks/workingSectionsFaults"
import type { Edit } from "../../document/edit"
import type { Plan } from "../../document/schema"
import { dividingOf } from "../../figures/workingSections"

/** Takes a dividing parting out, and with it those that ended on it and now divide nothing. */
export const removeWorkingParting =
  (id: string): Edit =>
  (plan) => {
    const { named } = dividingOf(plan)
    const gone = [id, ...endingOn(id, plan)]
    const dividers = dividingOf(plan).dividers.filter((each) => !gone.includes(each.id))
    return dividers.length === 0
      ? removeAllWorkingPartings(plan)
      : { ...plan, workingSections: { dividers, named } }
  }

/** Takes the whole division up; the names and the order of the working sections go with it. */
export const removeAllWorkingPartings: Edit = (plan) => {
  const { workingSections: _, ...rest } = plan
  return rest
}

/** The dividing partings that would divide nothing without another. */
export function endingOn(id: string, plan: Plan): string[] {
  const { dividers, named } = dividingOf(plan)
  let left = dividers.filter((each) => each.id !== id)
  const gone: string[] = []
  for (;;) {
    const without: Plan = { ...plan, workingSections: { dividers: left, named } }
    const loose = left.find((_, index) => dividerFault(index, without) !== null)
    if (!loose) return gone
    gone.push(loose.id)
    left = left.filter((each) => each !== loose)
  }
}
