import type { Section } from "../../../../geometry/section/section"
import { validateEdit } from "../../checks/validateEdit"
import type { Edit } from "../../document/edit"

/** Puts sections at the end of the order of application. */
export const addSections =
  (...sections: readonly Section[]): Edit =>
  (plan) =>
    validateEdit(plan, { ...plan, sections: [...plan.sections, ...sections] })
