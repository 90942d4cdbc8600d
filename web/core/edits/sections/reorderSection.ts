import type { Edit } from "../../document/edit"

/** Moves a section to a place in the order of application; 0 goes on first. Its number on the map stays. */
export const reorderSection =
  (id: string, toIndex: number): Edit =>
  (plan) => {
    const at = plan.sections.findIndex((section) => section.id === id)
    const to = Math.min(plan.sections.length - 1, Math.max(0, toIndex))
    if (at < 0 || at === to) return plan
    return { ...plan, sections: plan.sections.toSpliced(at, 1).toSpliced(to, 0, plan.sections[at]) }
  }

/** Puts sections right before or after another in the order of application, in the order they are in. Their numbers stay. */
export const placeBeside =
  (ids: readonly string[], besideId: string, side: "before" | "after"): Edit =>
  (plan) => {
    const moved = plan.sections.filter(({ id }) => ids.includes(id))
    const rest = plan.sections.filter(({ id }) => !ids.includes(id))
    const at = rest.findIndex(({ id }) => id === besideId)
    if (at < 0) return plan
    const sections = rest.toSpliced(side === "before" ? at : at + 1, 0, ...moved)
    return sections.every((section, i) => section === plan.sections[i]) ? plan : { ...plan, sections }
  }
