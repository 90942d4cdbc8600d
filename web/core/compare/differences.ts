import type { Head } from "../../../geometry/scalp/head"
import { isFoil, type Section, type SectionKind } from "../../../geometry/section/section"
import { tolerances } from "../../../presets/sheets/comparing"
import { besideOf } from "./beside"
import { angleBetween, apart, type Traced } from "./traced"

/** What a learner's section is held against, one by one. */
export const criteria = [
  "side",
  "hairline",
  "back",
  "along",
  "angle",
  "length",
  "depth",
  "start",
  "taken",
  "kind",
  "order",
] as const
export type Criterion = (typeof criteria)[number]

/** Criteria that are met within a measure the educator sets. */
export type Measured = keyof typeof tolerances
export const measuredCriteria = Object.keys(tolerances) as Measured[]
export type Tolerances = Readonly<Record<Measured, number>>
export const usualTolerances = Object.fromEntries(
  measuredCriteria.map((name) => [name, tolerances[name].value]),
) as Tolerances

/** Which way along the hairline; null where the hairline nearest to the two is not the same stretch. */
export type Toward = "nape" | "front" | "left" | "right" | null

/** By how much a learner's section differs from the model's: the learner's less the model's. */
export type Differences = {
  /** Farther behind the hairline where positive, mm. */
  hairlineMm: number
  /** Moved over square to the model's parting, away from the face where positive, mm. */
  backMm: number
  /** Slid along the model's parting, never negative, mm. */
  alongMm: number
  toward: Toward
  /** 0 to 90. */
  angleDeg: number
  /** A share of the model's length. */
  lengthShare: number
  /** At the end that differs more, mm. */
  depthMm: number
  /** Null where either is not coated. */
  startMm: number | null
  taken: { model: Section["taken"]; learner: Section["taken"] }
  kind: { model: SectionKind; learner: SectionKind }
}

export function differencesOf(model: Traced, learner: Traced, head: Head): Differences {
  const [one, other] = [model.section, learner.section]
  const { backMm, ...slid } = besideOf(model, learner, head)
  const alongMm = Math.abs(slid.alongMm)
  return {
    hairlineMm: learner.behindMm - model.behindMm,
    backMm,
    alongMm,
    toward: towardOf(model, learner, alongMm, head.hairline.lengthMm),
    angleDeg: angleBetween(model, learner),
    lengthShare: learner.lengthMm / model.lengthMm - 1,
    depthMm: deeperBy(one, other, apart(model, learner).isTurned),
    startMm: isFoil(one) && isFoil(other) ? other.rootDistanceMm - one.rootDistanceMm : null,
    taken: { model: one.taken, learner: other.taken },
    kind: { model: one.kind, learner: other.kind },
  }
}

/** A foot of the hairline this much farther off than the section itself is that of another stretch. */
const strays = { share: 3, mm: 5 }
/** A section whose middle lies nearer to the middle of the face than this, mm along the hairline, lies over it. */
const overMiddleMm = 10

function towardOf(model: Traced, learner: Traced, alongMm: number, roundMm: number): Toward {
  const straight = learner.alongMm - model.alongMm
  const by = straight - roundMm * Math.round(straight / roundMm)
  if (Math.abs(by) > strays.share * alongMm + strays.mm) return null
  if (Math.abs(model.alongMm) < overMiddleMm) return by > 0 ? "right" : "left"
  return by > 0 === model.alongMm > 0 ? "nape" : "front"
}

function deeperBy({ depthMm: one }: Section, { depthMm: other }: Section, isTurned: boolean): number {
  const atStart = (isTurned ? other.end : other.start) - one.start
  const atEnd = (isTurned ? other.start : other.end) - one.end
  return Math.abs(atEnd) > Math.abs(atStart) ? atEnd : atStart
}

/** Steps in which measures are told: what is told as allowed is allowed. */
const toldIn = { mm: 0.1, deg: 1, percent: 1 }
const told = (by: number, step: number) => Math.round(Math.abs(by) / step) * step

/** Which measures are within what is allowed; null where there is nothing to hold one against. */
export function metWithin(found: Differences, allowed: Tolerances): Record<Measured, boolean | null> {
  const within = (by: number, name: Measured, step = toldIn.mm) =>
    told(by, step) <= told(allowed[name], step) + slack
  return {
    hairline: within(found.hairlineMm, "hairline"),
    back: within(found.backMm, "back"),
    along: within(found.alongMm, "along"),
    angle: within(found.angleDeg, "angle", toldIn.deg),
    length: within(100 * found.lengthShare, "length", toldIn.percent),
    depth: within(found.depthMm, "depth"),
    start: found.startMm === null ? null : within(found.startMm, "start"),
  }
}

const slack = 1e-6
