import type { Edit } from "../edit"

/** Moves a section to a place in the order of application; 0 goes on first. Its number on the map stays. */
export const reorderSection =
  (id: string, toIndex: number): Edit =>
  (plan) => {
    const at = plan.sections.findIndex((section) => section.id === id)
    const to = Math.min(plan.sections.length - 1, Math.max(0, toIndex))
    if (at < 0 || at === to) return plan
    return { ...plan, sections: plan.sections.toSpliced(at, 1).toSpliced(to, 0, plan.sections[at]) }
  }
