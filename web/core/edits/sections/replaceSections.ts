import type { Section } from "../../../../geometry/section/section"
import { validateEdit } from "../../checks/validateEdit"
import { type Edit, isRefusal, refuse } from "../../document/edit"
import { isSharedChange, twinAfter, twinOf } from "../../document/pairs"
import type { Refusal } from "../../document/refusal"
import type { Plan } from "../../document/schema"
import { sectionNameOf } from "../../document/sectionNameCode"
import { headOf } from "../../figures/measured"

type Change = (section: Section) => Section

/**
 * Each of the named sections as `change` leaves it, and its twin likewise on the other side; all others stay the same
 * objects. Where both of a pair are named, the one named first leads.
 */
export const replaceSections =
  (ids: readonly string[], change: Change): Edit =>
  (plan) => {
    const changed = withTwins(plan, ids, change)
    const made = validateEdit(plan, replaced(plan, changed))
    return isRefusal(made) ? pairRefusal(made, plan, ids, change) : made
  }

/** Each of the named sections as `change` leaves it, its twin left alone: for what is each section's own. */
export const replaceEach =
  (ids: readonly string[], change: Change): Edit =>
  (plan) =>
    validateEdit(plan, replaced(plan, changedAlone(plan, ids, change)))

const replaced = (plan: Plan, changed: ReadonlyMap<string, Section>) => ({
  ...plan,
  sections: plan.sections.map((section) => changed.get(section.id) ?? section),
})

const changedAlone = ({ sections }: Plan, ids: readonly string[], change: Change) =>
  new Map(sections.filter(({ id }) => ids.includes(id)).map((section) => [section.id, change(section)]))

function withTwins(plan: Plan, ids: readonly string[], change: Change): Map<string, Section> {
  const byId = new Map(plan.sections.map((section) => [section.id, section]))
  const changed = new Map<string, Section>()
  for (const id of ids) {
    const section = byId.get(id)
    if (!section || changed.has(id)) continue
    const after = change(section)
    changed.set(id, after)
    const twin = twinOf(section, plan)
    if (twin && isSharedChange(section, after))
      changed.set(twin.id, twinAfter(section, after, twin, change, headOf(plan)))
  }
  return changed
}

/** A refusal that only the twin is to blame for says how to change one side alone. */
function pairRefusal(refusal: Refusal, plan: Plan, ids: readonly string[], change: Change): Refusal {
  const alone = validateEdit(plan, replaced(plan, changedAlone(plan, ids, change)))
  const first = plan.sections.find(({ id }) => id === ids[0])
  return isRefusal(alone) || !first
    ? refusal
    : refuse({ code: "break-the-pair", section: sectionNameOf(first), because: refusal.refused })
}
