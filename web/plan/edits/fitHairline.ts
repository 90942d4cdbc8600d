import { followHairline } from "../../../geometry/head/followHairline"
import type { HairlineForm } from "../../../geometry/head/hairlineLandmarks"
import type { SurfacePath } from "../../../geometry/surfacePath"
import type { Edit } from "../edit"
import { headOf } from "../measured"
import { accept } from "./accept"

/** Gives the head another hairline. What is drawn near the old one goes along with it; what lies far inside stays. */
export const fitHairline =
  (form: HairlineForm): Edit =>
  (plan) => {
    const refitted = { ...plan, head: { ...plan.head, hairline: { form } } }
    const [from, to] = [headOf(plan).hairline, headOf(refitted).hairline]
    const follow = <Parted extends { parting: SurfacePath }>(each: Parted): Parted => ({
      ...each,
      parting: each.parting.map((at) => followHairline(from, to, at)),
    })
    const { workingSections: dividing } = plan
    return accept(plan, {
      ...refitted,
      sections: plan.sections.map(follow),
      ...(dividing && { workingSections: { ...dividing, dividers: dividing.dividers.map(follow) } }),
    })
  }
