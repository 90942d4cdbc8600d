import type { Section } from "../../../geometry/section/section"
import type { Edit } from "../edit"
import { accept } from "./accept"

/** Each of the named sections as `change` leaves it; all others stay the same objects. */
export const replaceSections =
  (ids: readonly string[], change: (section: Section) => Section): Edit =>
  (plan) =>
    accept(plan, {
      ...plan,
      sections: plan.sections.map((section) => (ids.includes(section.id) ? change(section) : section)),
    })
