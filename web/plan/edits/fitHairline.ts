import { followHairline } from "../../../geometry/head/followHairline"
import type { HairlineForm } from "../../../geometry/head/hairlineLandmarks"
import type { Edit } from "../edit"
import { headOf } from "../measured"
import { accept } from "./accept"

/** Gives the head another hairline. What is drawn near the old one goes along with it; what lies far inside stays. */
export const fitHairline =
  (form: HairlineForm): Edit =>
  (plan) => {
    const refitted = { ...plan, head: { ...plan.head, hairline: { form } } }
    const [from, to] = [headOf(plan).hairline, headOf(refitted).hairline]
    const sections = plan.sections.map((section) => ({
      ...section,
      parting: section.parting.map((at) => followHairline(from, to, at)),
    }))
    return accept(plan, { ...refitted, sections })
  }
