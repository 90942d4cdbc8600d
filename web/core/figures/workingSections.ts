import type { Head } from "../../../geometry/scalp/head"
import { areaCm2 } from "../../../geometry/surface/surfacePatch"
import { innerPlaces } from "../../../geometry/working/workingSectionPlaces"
import {
  areaAt,
  type DividedArea,
  type Division,
  divideScalp,
} from "../../../geometry/working/workingSections"
import type { Plan } from "../document/schema"
import type { Divider, WorkingSections } from "../document/workingSectionsSchema"
import { remembered } from "../memory/remembered"
import { numbered, type WorkingNameCode } from "../placement/workingName"
import { headOf } from "./measured"
import { byRule } from "./workingSectionsNames"

/** One part of a divided head. Derived, never stored; its name and its place in the order may be. */
export type WorkingSection = {
  name: WorkingNameCode
  /** The name it was given; empty when it has the one by rule. */
  ownName: string
  /** I, II, III ... in the order they are worked. */
  numeral: string
  /** Its place in the order they are worked, from 0. */
  place: number
  area: DividedArea
  /** The place of its area in the division. */
  areaIndex: number
}

const none: WorkingSections = { dividers: [], named: [] }

/** How the plan's head is divided, with nothing in it where the plan does not say. */
export const dividingOf = ({ workingSections }: Plan): WorkingSections => workingSections ?? none

/** The areas of a plan's head, remembered for as long as head and dividing partings stay. */
export const divisionOf = (plan: Plan): Division => dividedBy(headOf(plan), dividingOf(plan).dividers)

const dividedBy = remembered((head: Head, dividers: readonly Divider[]) =>
  divideScalp(
    head,
    dividers.map(({ parting }) => parting),
  ),
)

const nobody: readonly WorkingSection[] = []

/** The working sections of a plan in the order they are worked; none on a head that is not divided. */
export function workingSectionsOf(plan: Plan): readonly WorkingSection[] {
  const dividing = dividingOf(plan)
  if (dividing.dividers.length === 0) return nobody
  const division = divisionOf(plan)
  if (division.areas.length < 2) return nobody
  return listed(division, dividing, headOf(plan))
}

const listed = remembered((division: Division, { named }: WorkingSections, head: Head): WorkingSection[] => {
  const known = named.map(({ at, name }) => ({ area: areaAt(division, at), name }))
  const rankOf = (area: number) => {
    const rank = known.findIndex((each) => each.area === area)
    return rank < 0 ? known.length : rank
  }
  const ruled = byRule(division.areas, head)
  const areas = ruled.map((rule) => ({ ...rule, rank: rankOf(rule.index) })).sort((a, b) => a.rank - b.rank)
  const names = numbered(
    areas.map(({ kind, side, rank }) => {
      const own = known[rank]?.name
      return own ? { code: "own-name", name: own } : { code: "by-place", kind, side }
    }),
  )
  return areas.map(({ index }, i) => ({
    name: names[i],
    ownName: known[areas[i].rank]?.name ?? "",
    numeral: numeralOf(i + 1),
    place: i,
    area: division.areas[index],
    areaIndex: index,
  }))
})

const romans = [
  [100, "C"],
  [90, "XC"],
  [50, "L"],
  [40, "XL"],
  [10, "X"],
  [9, "IX"],
  [5, "V"],
  [4, "IV"],
  [1, "I"],
] as const

/** Roman, so that it is neither a foil's number nor a mix's letter. */
export function numeralOf(count: number): string {
  const step = romans.find(([value]) => value <= count)
  return step ? step[1] + numeralOf(count - step[0]) : ""
}

/** A place in a working section that it keeps its name and order by: the one farthest inside. */
export const placeIn = ({ area }: WorkingSection) => innerPlaces(area)[0].at

/** Scalp of a working section, cm2. */
export const workingAreaCm2 = ({ area }: WorkingSection, plan: Plan): number =>
  measuredArea(area, headOf(plan).surface)

const measuredArea = remembered(({ ring }: DividedArea, surface: Head["surface"]) => areaCm2(surface, ring))
