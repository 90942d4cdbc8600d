import type { Section } from "../../../geometry/section/section"
import { twinOf } from "../document/pairs"
import type { Plan } from "../document/schema"
import { type SectionNameCode, sectionNameOf } from "../document/sectionNameCode"
import { type Side, sideOf } from "./places"

/** The section that another makes a pair with, and the client's side that it lies on. */
export type PairCode = { other: SectionNameCode; side: Side }

export function pairOf(section: Section, plan: Plan): PairCode | null {
  const twin = twinOf(section, plan)
  return twin ? { other: sectionNameOf(twin), side: sideOf(twin) } : null
}
