import type { DirectionName } from "../../../geometry/parting/direction"
import {
  type CarrierKind,
  type Foil,
  type FoilKind,
  isFoil,
  type Section,
} from "../../../geometry/section/section"
import type { ProductSheet } from "../../../presets/formula/productSheet"
import {
  clips,
  type FaultName,
  paintedFaults,
  seeThroughMm,
  usualFaults,
} from "../../../presets/sheets/teaching"
import { foilMin, looks } from "../../../presets/timing/pace"
import { sheetOf } from "../document/salon"
import type { Mix, Plan } from "../document/schema"
import { foilCount } from "../figures/foilCount"
import { headOf, measured } from "../figures/measured"
import { workingSectionsOf } from "../figures/workingSections"
import type { Piece } from "../kinds/kindRecord"
import { pieceOf as piecesOf, traitsOf, valuesOf } from "../kinds/kindRecords"
import { directionIn } from "../placement/places"
import { mixesUsed } from "../schedule/mixesUsed"
import { type FoilPlace, placesOf } from "../schedule/placesOf"
import { longestMin } from "../schedule/scheduleFromPlan"
import { teachingSteps } from "./teachingSteps"

/** What a class is told of a technique, drawn from the plan: the aim, the tools, the times, the checks, the faults. */

export type AimCode =
  | { code: "nothing-drawn" }
  | { code: "brighten"; places: readonly FoilPlace[]; foils: number; pieces: readonly PieceCode[] }
  /** What is left out by name, "" for hair without one. */
  | { code: "leave"; names: readonly string[] }
/** Sections worked in one way: one of them, or several. */
export type PieceCode = { kind: FoilKind; direction: DirectionName; isOne: boolean }

const foilsOf = ({ sections }: Pick<Plan, "sections">) => sections.filter(isFoil)
const leftOutOf = ({ sections }: Pick<Plan, "sections">) => [
  ...new Set(sections.filter((section) => !isFoil(section)).map(({ name }) => name)),
]

export function aimOf(plan: Plan): AimCode[] {
  const foils = foilsOf(plan)
  if (foils.length === 0) return [{ code: "nothing-drawn" }]
  const names = leftOutOf(plan)
  const pieces = teachingSteps(plan).flatMap(({ rows: [first], sections }) =>
    isFoil(first) ? [pieceOf(first, sections, plan)] : [],
  )
  return [
    { code: "brighten", places: placesOf(foils, plan), foils: foilCount(foils, plan), pieces: once(pieces) },
    ...(names.length > 0 ? [{ code: "leave" as const, names }] : []),
  ]
}

const pieceOf = (first: Foil, sections: readonly Section[], plan: Plan): PieceCode => ({
  kind: first.kind,
  direction: directionIn(first, headOf(plan)).name,
  isOne: sections.length === 1,
})

const once = <T>(each: readonly T[]): T[] => [
  ...new Map(each.map((one) => [JSON.stringify(one), one])).values(),
]

export type ToolCode =
  | { code: "comb" }
  | { code: "section-clips"; count: number }
  | { code: "clips"; low: number; high: number }
  | { code: "carriers"; carrier: CarrierKind; count: number; widthMm: number; lengthMm: number }
  | {
      code: "mix"
      mix: string
      /** What kind of lightener; null where no sheet says. */
      form: ProductSheet["form"] | null
      developerVolume: number
      ratio: Mix["ratio"]
    }
  | { code: "bowls"; count: number }
  | { code: "keeping" }
  | { code: "minding"; piece: Piece }

/** What the sections of a plan are called together. */
const pieceIn = (plan: Plan): Piece => piecesOf(foilsOf(plan))

/** What lies ready, a line each. The product goes by its kind, not its name: the class has its own. */
export function toolsOf(plan: Plan): ToolCode[] {
  const parts = workingSectionsOf(plan).length
  const used = mixesUsed(plan.mixes, foilsOf(plan))
  const [low, high] = clips.range
  return [
    { code: "comb" },
    parts > 0 ? { code: "section-clips", count: parts } : { code: "clips", low, high },
    ...carriersOf(plan),
    ...used.map((mix) => mixTool(mix, plan)),
    { code: "bowls", count: Math.max(1, used.length) },
    { code: "keeping" },
    { code: "minding", piece: pieceIn(plan) },
  ]
}

function mixTool({ id, product, developerVolume, ratio }: Mix, plan: Plan): ToolCode {
  const sheet = sheetOf(product, plan)
  return {
    code: "mix",
    mix: id,
    form: sheet?.kind === "lightener" ? sheet.form : null,
    developerVolume,
    ratio,
  }
}

/** How many of each size it takes. */
function carriersOf(plan: Plan): ToolCode[] {
  const counts = new Map<string, Extract<ToolCode, { code: "carriers" }>>()
  for (const { section, figures } of measured(plan).sections) {
    if (!isFoil(section)) continue
    const { kind, widthMm, lengthMm } = section.carrier
    const key = kind === "open-air" || kind === "film" ? kind : `${kind} ${widthMm} ${lengthMm}`
    const more = kind === "foil" ? Math.max(1, figures.foils) : 1
    const count = (counts.get(key)?.count ?? 0) + more
    counts.set(key, { code: "carriers", carrier: kind, count, widthMm, lengthMm })
  }
  return [...counts.values()]
}

export type TeachingTimeCode =
  | { code: "first-check"; firstMin: number; delicateMin: number; everyMin: number; piece: Piece }
  /** From the product's own sheet, or what is usual where no sheet says. */
  | { code: "max-time"; mix: string; maxMin: number; isFromSheet: boolean; firstCheckMin: number | null }
  | { code: "each-foil"; piece: Piece }
  | { code: "learner-pace"; lowMin: number; highMin: number; foils: number }

/** When to check, and how long at most: from the sheets, else as is usual. */
export function timingOf(plan: Plan): TeachingTimeCode[] {
  const used = mixesUsed(plan.mixes, foilsOf(plan))
  const { low, high } = foilMin.learner
  const laid = measured(plan).totals.foils
  return [
    {
      code: "first-check",
      firstMin: looks.firstMin,
      delicateMin: looks.firstDelicateMin,
      everyMin: looks.everyMin,
      piece: pieceIn(plan),
    },
    ...used.map((mix) => maxTime(mix, plan)),
    { code: "each-foil", piece: pieceIn(plan) },
    ...(laid > 0 ? [{ code: "learner-pace" as const, lowMin: low, highMin: high, foils: laid }] : []),
  ]
}

function maxTime({ id, product }: Mix, plan: Plan): TeachingTimeCode {
  const sheet = sheetOf(product, plan)
  return {
    code: "max-time",
    mix: id,
    maxMin: longestMin(sheet ?? undefined),
    isFromSheet: (sheet?.longestMin ?? null) !== null,
    firstCheckMin: sheet?.firstLookMin || null,
  }
}

export type SelfCheckCode =
  | { code: "see-through"; slices: readonly number[] }
  | { code: "even-stitches"; stitchMm: number; gapMm: number; weave: number }
  | { code: "cushion-dry" }
  | { code: "product-start"; rootMm: number }
  | { code: "both-faces" }
  | { code: "left-out-dry"; names: readonly string[] }
  | { code: "sides-match" }
  | { code: "minutes-noted"; piece: Piece }
  | { code: "foils-sound" }

const mostChecks = 8

/** What a student ticks before the assessor comes. */
export function selfChecks(plan: Plan): SelfCheckCode[] {
  const foils = foilsOf(plan)
  const thin = foils.filter(
    (foil) => traitsOf(foil).isSolid && Math.max(foil.depthMm.start, foil.depthMm.end) <= seeThroughMm,
  )
  const woven = foils.find((foil) => traitsOf(foil).isWoven)
  const stitching = woven && valuesOf(woven).stitching
  const names = leftOutOf(plan)
  const rootMm = Math.min(...foils.map(({ rootDistanceMm }) => rootDistanceMm))
  const checks: (SelfCheckCode | false)[] = [
    thin.length > 0 && { code: "see-through", slices: thin.map(({ mapNumber }) => mapNumber) },
    woven !== undefined &&
      stitching !== undefined && {
        code: "even-stitches",
        stitchMm: stitching.stitchMm,
        gapMm: stitching.gapMm,
        weave: woven.mapNumber,
      },
    foils.some((foil) => traitsOf(foil).hasCushion) && { code: "cushion-dry" },
    foils.length > 0 && { code: "product-start", rootMm },
    foils.some(({ faces }) => faces === 2) && { code: "both-faces" },
    names.length > 0 && { code: "left-out-dry", names },
    plan.sections.some(({ twin }) => twin) && { code: "sides-match" },
    { code: "minutes-noted", piece: pieceIn(plan) },
    pieceIn(plan) !== "panel" && { code: "foils-sound" },
  ]
  return checks.filter((check) => check !== false).slice(0, mostChecks)
}

/** The faults that what is drawn can have. */
export function faultsOf(plan: Plan): FaultName[] {
  const foils = foilsOf(plan)
  const usual: readonly FaultName[] = pieceIn(plan) === "panel" ? paintedFaults : usualFaults
  return [
    ...usual,
    ...(foils.some(({ carrier }) => carrier.kind === "foil") ? (["foil-slipping"] as const) : []),
    ...(foils.some((foil) => traitsOf(foil).hasCushion) ? (["cushion-wet"] as const) : []),
  ]
}
