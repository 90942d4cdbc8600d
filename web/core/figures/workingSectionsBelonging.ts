import type { Head } from "../../../geometry/scalp/head"
import type { Section } from "../../../geometry/section/section"
import { sharesCm2 } from "../../../geometry/working/workingSectionShares"
import type { Division } from "../../../geometry/working/workingSections"
import type { Plan } from "../document/schema"
import { remembered } from "../memory/remembered"
import { headOf } from "./measured"
import { leastOverlapCm2 } from "./overlaps"
import { divisionOf, type WorkingSection, workingSectionsOf } from "./workingSections"

/** Scalp of a section in each area of the divided head, cm2, remembered for as long as both stay. */
const sharesIn = remembered((division: Division, section: Section, head: Head) =>
  sharesCm2(section, head, division),
)

/** The working sections a section has hair in, the one with most of it first. */
function reachesInto(section: Section, plan: Plan): { working: WorkingSection; cm2: number }[] {
  const all = workingSectionsOf(plan)
  if (all.length === 0) return []
  const shares = sharesIn(divisionOf(plan), section, headOf(plan))
  return all.map((working) => ({ working, cm2: shares[working.areaIndex] })).toSorted((a, b) => b.cm2 - a.cm2)
}

/** The working section in which most of a section's hair lies; null on a head that is not divided. */
export const homeOf = (section: Section, plan: Plan): WorkingSection | null =>
  reachesInto(section, plan)[0]?.working ?? null

/** The sections of a plan by the working section they belong to, in the order these are worked; each in order of application. */
export function byWorkingSection(plan: Plan): { working: WorkingSection; sections: readonly Section[] }[] {
  const homes = plan.sections.map((section) => homeOf(section, plan))
  return workingSectionsOf(plan).map((working) => ({
    working,
    sections: plan.sections.filter((_, i) => homes[i] === working),
  }))
}

/** A section with hair in a second working section. */
export type Crossing = { section: Section; home: WorkingSection; into: WorkingSection; cm2: number }

/** A smaller share of its scalp over the edge is a comb's tooth. */
const leastShare = 0.05

/** Where a section reaches into another working section than its own; null when it does not, or may. */
export function crossingOf(section: Section, plan: Plan): Crossing | null {
  if (section.mayCross) return null
  const [home, into] = reachesInto(section, plan)
  if (!into || into.cm2 < Math.max(leastOverlapCm2, leastShare * (home.cm2 + into.cm2))) return null
  return { section, home: home.working, into: into.working, cm2: into.cm2 }
}

/** Every section that crosses a dividing parting and was not told that it may, in order of application. */
export const crossingsOf = (plan: Plan): Crossing[] =>
  workingSectionsOf(plan).length === 0
    ? []
    : plan.sections.flatMap((section) => crossingOf(section, plan) ?? [])
