import {
  cleanParting,
  hairlineParting,
  type Parted,
  partingBehind,
} from "../../../../geometry/parting/parting"
import type { Head } from "../../../../geometry/scalp/head"
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
import { type Fronted, frontOf, overlaps, type Run, runsBeside } from "./hairlineRuns"
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

/** A run of the hairline shorter than this is left to the sections beside it, mm. */
const shortestRunMm = 8

/**
 * Leaves the edge of the hairline out in front of these sections, or from temple to temple when there are none: beside
 * whatever lies at the hairline already, and no deeper than the sections behind it leave.
 */
export const leaveBabyHairs =
  (ids: readonly string[], name: string): Edit =>
  (plan) => {
    const head = headOf(plan)
    const all = plan.sections.map((section) => frontOf(section, head))
    const isAtHairline = ({ roomMm }: Fronted) => roomToLeaveMm(roomMm) < limits.depthMm.low
    const chosen = all.filter(({ section }) => ids.includes(section.id))
    const roomy = chosen.filter((each) => !isAtHairline(each))
    const wanted = chosen.length > 0 ? spanOf(roomy) : templesOf(head)
    const taken = all.filter(isAtHairline)
    const runs = wanted ? runsBeside(wanted, taken, shortestRunMm) : []
    if (runs.length === 0) {
      const inTheWay = wanted ? taken.filter((each) => overlaps(each, wanted)) : chosen
      return refuse({
        code: "up-to-hairline",
        sections: inTheWay.map(({ section }) => sectionNameOf(section)),
      })
    }
    return leaveAll(
      plan,
      runs.map((run) => {
        const behind = all.filter((each) => !isAtHairline(each) && overlaps(each, run))
        const depthMm = Math.min(leftOutDepthMm.value, ...behind.map(({ roomMm }) => roomToLeaveMm(roomMm)))
        const { fromMm, toMm } = run
        const made = hairlineParting(head, { fromAlongMm: fromMm, toAlongMm: toMm, behindMm: depthMm })
        return [made, { name, taken: "front", depthMm: even(depthMm) }]
      }),
    )
  }

/** What may be left out in front of a section that leaves so much, less a hair's breadth, in half millimetres. */
const roomToLeaveMm = (roomMm: number) => Math.floor((roomMm - hairsbreadthMm) * 2) / 2

const spanOf = (fronts: readonly Fronted[]): Run | null =>
  fronts.length === 0
    ? null
    : {
        fromMm: Math.min(...fronts.map(({ fromMm }) => fromMm)),
        toMm: Math.max(...fronts.map(({ toMm }) => toMm)),
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

const leave = (plan: Plan, made: Parted, band: LeftOutBand) => leaveAll(plan, [[made, band]])

/** All of them in one change. */
function leaveAll(plan: Plan, bands: readonly (readonly [Parted, LeftOutBand])[]): Plan | Refusal {
  const sections: Section[] = []
  for (const [made, { name, taken, depthMm }] of bands) {
    if ("refused" in made) return refuse({ code: "no-room-for", name })
    const before = { ...plan, sections: [...plan.sections, ...sections] }
    const section = newSection("left-out", made.parting, before, { ...usualSection, leftOutName: name })
    sections.push({ ...section, taken, depthMm })
  }
  return addSections(...sections)(plan)
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

const templesOf = ({ hairline: { sides } }: Head): Run => ({
  fromMm: -sides.left.landmarkAlongMm("temple"),
  toMm: sides.right.landmarkAlongMm("temple"),
})
