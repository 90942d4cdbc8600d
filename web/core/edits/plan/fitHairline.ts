import { followHairline } from "../../../../geometry/scalp/followHairline"
import type { LandmarkedHairline } from "../../../../geometry/scalp/hairline"
import type { HairlineForm } from "../../../../geometry/scalp/hairlineLandmarks"
import type { SurfacePoint } from "../../../../geometry/surface/frames"
import type { SurfacePath } from "../../../../geometry/surface/surfacePath"
import { validateEdit } from "../../checks/validateEdit"
import type { Edit } from "../../document/edit"
import type { HairlinePlan } from "../../document/hairlineSchema"
import type { Plan } from "../../document/schema"
import { headOf } from "../../figures/measured"

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
  return validateEdit(plan, {
    ...refitted,
    sections: plan.sections.map(along),
    ...(dividing && { workingSections: { ...dividing, dividers: dividing.dividers.map(along) } }),
  })
}
