import type { SurfacePoint } from "../../../geometry/frames"
import { followHairline } from "../../../geometry/head/followHairline"
import type { LandmarkedHairline } from "../../../geometry/head/hairline"
import type { HairlineForm } from "../../../geometry/head/hairlineLandmarks"
import type { SurfacePath } from "../../../geometry/surfacePath"
import type { Edit } from "../edit"
import type { HairlinePlan } from "../hairlineSchema"
import { headOf } from "../measured"
import type { Plan } from "../schema"
import { accept } from "./accept"

/** Gives the head another hairline. What is drawn near the old one goes along with it; what lies far inside stays. */
export const fitHairline =
  (form: HairlineForm): Edit =>
  (plan) =>
    changeHairline(plan, { ...plan.head.hairline, form }, (from, to) => (at) => followHairline(from, to, at))

/** Where a place of the scalp map goes when one hairline becomes another. */
type Follow = (from: LandmarkedHairline, to: LandmarkedHairline) => (at: SurfacePoint) => SurfacePoint

/** The plan with another hairline, and every parting where it goes then. */
export function changeHairline(plan: Plan, hairline: HairlinePlan, follow: Follow) {
  const refitted = { ...plan, head: { ...plan.head, hairline } }
  const goes = follow(headOf(plan).hairline, headOf(refitted).hairline)
  const along = <Parted extends { parting: SurfacePath }>(each: Parted): Parted => {
    const parting = each.parting.map(goes)
    return parting.every((at, i) => at === each.parting[i]) ? each : { ...each, parting }
  }
  const { workingSections: dividing } = plan
  return accept(plan, {
    ...refitted,
    sections: plan.sections.map(along),
    ...(dividing && { workingSections: { ...dividing, dividers: dividing.dividers.map(along) } }),
  })
}
