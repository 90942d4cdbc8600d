import type { Section } from "../../../geometry/section/section"
import type { Edit } from "../edit"
import { accept } from "./accept"

/** Puts sections at the end of the order of application. */
export const addSections =
  (...sections: readonly Section[]): Edit =>
  (plan) =>
    accept(plan, { ...plan, sections: [...plan.sections, ...sections] })
