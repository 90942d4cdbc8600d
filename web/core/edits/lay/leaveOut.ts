import {
  cleanParting,
  hairlineParting,
  type Parted,
  partingBehind,
} from "../../../../geometry/parting/parting"
import type { Head } from "../../../../geometry/scalp/head"
import { bandEdges } from "../../../../geometry/section/bandEdges"
import { isFoil, type Section } from "../../../../geometry/section/section"
import type { SurfacePoint } from "../../../../geometry/surface/frames"
import { leftOutDepthMm, veilDepthMm } from "../../../../presets/plans/startingPlan"
import { type Edit, refuse } from "../../document/edit"
import { newSection, usualSection } from "../../document/newSection"
import type { Refusal, RefusalCode } from "../../document/refusal"
import type { Plan } from "../../document/schema"
import { sectionNameOf } from "../../document/sectionNameCode"
import { limits } from "../../fields/limits"
import { headOf } from "../../figures/measured"
import { addSections } from "../sections/addSections"
import { spaceBetween } from "./spaceBetween"
import { veilOverParting } from "./veilOverParting"

/** Two bands that meet are kept this far from each other, mm, so that neither takes a hair of the other. */
export const hairsbreadthMm = 0.3

export type LeftOutBand = { name: string; taken: "front" | "behind"; depthMm: Section["depthMm"] }

/** Leaves hair out behind the last of these sections, so that it falls over them; over the parting worn when there are none. */
export const leaveVeil =
  (ids: readonly string[], name: string): Edit =>
  (plan) => {
    const head = headOf(plan)
    const last = rearmost(sectionsOf(plan, ids), head)
    const band = { name, taken: "front", depthMm: even(veilDepthMm.value) } as const
    if (!last) {
      const { made, taken } = veilOverParting(head, plan.head.wornParting)
      return leave(plan, made, { ...band, taken })
    }
    const ahead = last.taken === "behind" ? Math.max(last.depthMm.start, last.depthMm.end) : 0
    const made = partingBehind(head, last.parting, ahead + hairsbreadthMm + veilDepthMm.value)
    if ("refused" in made) return refuse({ code: "no-hair-for-veil", section: sectionNameOf(last) })
    return leave(plan, made, band)
  }

/** Leaves the edge of the hairline out in front of these sections, or from temple to temple when there are none. */
export const leaveBabyHairs =
  (ids: readonly string[], name: string): Edit =>
  (plan) => {
    const head = headOf(plan)
    const sections = sectionsOf(plan, ids)
    const places = sections.flatMap((section) =>
      bandEdges(section, head).front.map(head.hairline.coordinates),
    )
    const roomMm = Math.min(...places.map(({ behindMm }) => behindMm)) - hairsbreadthMm
    const depthMm = Math.min(leftOutDepthMm.value, Math.floor(roomMm * 2) / 2)
    if (depthMm < limits.depthMm.low)
      return refuse({ code: "up-to-hairline", sections: sections.map(sectionNameOf) })
    const alongMm = sections.length > 0 ? places.map((place) => place.alongMm) : templesMm(head)
    const made = hairlineParting(head, {
      fromAlongMm: Math.min(...alongMm),
      toAlongMm: Math.max(...alongMm),
      behindMm: depthMm,
    })
    return leave(plan, made, { name, taken: "front", depthMm: even(depthMm) })
  }

/** Leaves the hair between two sections out, called by the two. */
export const leaveBetween =
  (ids: readonly string[], nameOf: (front: string, back: string) => string): Edit =>
  (plan) => {
    const head = headOf(plan)
    const sections = sectionsOf(plan, ids)
    if (sections.length !== 2) return refuse({ code: "choose-two" })
    const [front, back] = sections.toSorted((a, b) => behindOf(a, head) - behindOf(b, head))
    const space = spaceBetween(front, back, head)
    if ("refused" in space) return refuse(spaceRefusal(space.refused, [front, back]))
    const name = nameOf(shortName(front), shortName(back))
    return leave(plan, cleanParting(head, space.line), { name, taken: "front", depthMm: space.depthMm })
  }

function spaceRefusal(why: "none" | "wide", between: readonly Section[]): RefusalCode {
  const sections = between.map(sectionNameOf)
  return why === "none"
    ? { code: "nothing-between", sections }
    : { code: "wide-between", mostMm: limits.depthMm.high, sections }
}

function leave(plan: Plan, made: Parted, { name, taken, depthMm }: LeftOutBand): Plan | Refusal {
  if ("refused" in made) return refuse({ code: "no-room-for", name })
  const section = newSection("left-out", made.parting, plan, { ...usualSection, leftOutName: name })
  return addSections({ ...section, taken, depthMm })(plan)
}

const even = (depthMm: number) => ({ start: depthMm, end: depthMm })

/** By its number on the map, or by the name of hair left out. */
const shortName = (section: Section) => (isFoil(section) ? `${section.mapNumber}` : section.name)

const sectionsOf = ({ sections }: Plan, ids: readonly string[]) =>
  sections.filter(({ id }) => ids.includes(id))

const middleOf = ({ parting }: Section): SurfacePoint => parting[parting.length >> 1]
const behindOf = (section: Section, head: Head) => head.hairline.coordinates(middleOf(section)).behindMm

const rearmost = (sections: readonly Section[], head: Head) =>
  sections.toSorted((a, b) => behindOf(b, head) - behindOf(a, head)).at(0)

const templesMm = ({ hairline: { sides } }: Head): readonly number[] => [
  -sides.left.landmarkAlongMm("temple"),
  sides.right.landmarkAlongMm("temple"),
]
