import type { Range } from "../../../geometry/hair/tradeFigures"
import { zoneAt } from "../../../geometry/scalp/zones"
import {
  coatsOf,
  type Foil,
  type FoilKind,
  isFoil,
  rootsAfterMin,
  rootsOf,
} from "../../../geometry/section/section"
import { bowlFigures } from "../../../presets/formula/bowlFigures"
import type { ProductSheet } from "../../../presets/formula/productSheet"
import { tradeFigures } from "../../../presets/formula/tradeFigures"
import * as pace from "../../../presets/timing/pace"
import { heatOverridden } from "../cautions/cautions"
import { mixesPlanned } from "../cautions/visitOfPlan"
import type { Mix, Plan } from "../document/schema"
import type { StrandTest, TimingChoices } from "../document/timingChoices"
import type { CoatedFigures } from "../figures/coatFigures"
import { foilsIn } from "../figures/foilCount"
import { takesAtHairline } from "../figures/hairAtHairline"
import { headOf, netOf } from "../figures/measured"
import { homeOf } from "../figures/workingSectionsBelonging"
import { goalOfFoil } from "../lift/foilLevels"
import { readyWith } from "../lift/liftOfPlan"
import { isFine, liftsFirst, readyFirst } from "../lift/liftsFirst"
import type { LiftGoal } from "../lift/scheduleReady"
import { placedInTurn, planBowls } from "../mixing/bowls"
import { mixRecipe } from "../mixing/mixRecipe"
import { labelPercent, onHeadPercent } from "../mixing/strength"
import { sideOf } from "../placement/places"
import { tonesOfPlan } from "../tone/tonesOfPlan"
import {
  type Person,
  type PlannedHeat,
  type Service,
  servedBy,
  type TimedFoil,
  type TimedMix,
  type Zone,
} from "./scheduleInput"
import { firstLookMin } from "./scheduleLooks"

export type ServiceChoices = {
  /** Minutes a foil, before what its kind takes more. */
  paceMin: Range
  /** What was learnt of each kind, in place of it. */
  learntMin: TimingChoices["pace"]
  hands: 1 | 2
  breaks: TimingChoices["breaks"]
  rinse: Service["rinse"]
  heatMin: number | null
  heatC: number | null
  freshAt: readonly string[]
  secondPace: TimingChoices["secondPace"]
  bookingMin: number | null
  isDried: boolean
  goal: LiftGoal | null
  /** Each foil's lift is counted from the level of its own hair: unless the clock was told levels. */
  countsByHair: boolean
  strandTest: StrandTest | null
}

/**
 * A plan as the clock sees it, with the usual figures where nothing is known. A section wider than one foil takes as
 * long as its foils.
 */
export function serviceOf(plan: Plan, sheets: readonly ProductSheet[], choices: ServiceChoices): Service {
  const sheetOf = new Map(plan.mixes.map((mix) => [mix.id, sheets.find(({ name }) => name === mix.product)]))
  const readyMin = readyByGoal(plan, sheets, choices)
  const foils = plan.sections
    .filter(isFoil)
    .map((foil) => timedFoil(foil, plan, { sheetOf, readyMin, choices }))
    .map((foil) => (choices.freshAt.includes(foil.id) ? { ...foil, startsBowl: true } : foil))
  const mixes = plan.mixes.map((mix) => timedMix(mix, sheetOf.get(mix.id)))
  return {
    foils,
    mixes,
    bowls: plan.mixes.flatMap((mix) => bowlsOf(mix, foils, sheetOf.get(mix.id), plan)),
    hands: handsOf(foils, choices),
    preparingMin: pace.roundTheFoils.preparingMin,
    partingMin: pace.roundTheFoils.partingMin,
    wipingMin: pace.roundTheFoils.wipingMin,
    rinse: choices.rinse,
    looks: pace.looks,
    heat: choices.heatMin === null ? null : heatOf(plan, choices.heatMin, choices.heatC),
    finish: finishOf(plan, choices),
    bookingMin: choices.bookingMin,
    soFar: null,
  }
}

/** Heat with what was overridden in writing for it: by the same rows as the stops, so that the clock and they agree. */
function heatOf(plan: Plan, minutes: number, warmthC: number | null): PlannedHeat {
  const { consultation, date } = plan
  if (!consultation || consultation.passes.length === 0) return { minutes, warmthC }
  const mixes = mixesPlanned(plan).map((mix) => ({ ...mix, heatMin: minutes }))
  const [place, time] = (["heat-place", "heat-time"] as const).map((rule) =>
    heatOverridden(rule, { consultation, mixes, date }),
  )
  return { minutes, warmthC, overridden: { place, time } }
}

/** Minutes on until ready in each mix, worked out once for each goal, and for the hair that lifts first. */
function readyByGoal(plan: Plan, sheets: readonly ProductSheet[], choices: ServiceChoices) {
  const sheetOf = (product: string | undefined) => sheets.find(({ name }) => name === product)
  const testedSheet = sheetOf(choices.strandTest?.product)
  const known = new Map<string, TimedFoil["readyMin"]>()
  return (goal: LiftGoal | null, isFirst: boolean): TimedFoil["readyMin"] => {
    const key = `${goal ? goal.toLevel - goal.fromLevel : ""} ${isFirst}`
    const asked = { goal, strandTest: choices.strandTest, testedSheet, start: plan.salon?.start }
    const readyIn = (mix: Mix) => {
      const ready = readyWith(mix, sheetOf(mix.product), asked)
      return isFirst ? readyFirst(ready) : ready
    }
    const ready = known.get(key) ?? Object.fromEntries(plan.mixes.map((mix) => [mix.id, readyIn(mix)]))
    known.set(key, ready)
    return ready
  }
}

/** The longest time of a mix: its sheet's, or where that is silent the usual one. */
export const longestMin = (sheet: ProductSheet | undefined) =>
  sheet?.longestMin ?? pace.longestWithoutSheetMin

const none: Range = { low: 0, mid: 0, high: 0 }

const potLifeMin = (sheet: ProductSheet | undefined) => sheet?.potLifeMin ?? pace.bowl.potLifeMin

const { mostMixG, stayG, stayShare } = bowlFigures

type Known = {
  sheetOf: ReadonlyMap<string, ProductSheet | undefined>
  readyMin: ReturnType<typeof readyByGoal>
  choices: ServiceChoices
}

function timedFoil(foil: Foil, plan: Plan, { sheetOf, readyMin, choices }: Known): TimedFoil {
  const { coats } = netOf(foil, plan)
  const roots = rootsOf(foil)
  const afterMin = rootsAfterMin(roots)
  const zone = zoneOf(foil, plan)
  const goal = choices.goal && choices.countsByHair ? goalOfFoil(foil, zone, plan) : choices.goal
  const isStrandSeen = goal !== null && (choices.strandTest?.rows.length ?? 0) > 0
  const first = liftsFirst(foil, plan, isStrandSeen)
  const atHairline = takesAtHairline(foil, headOf(plan))
  const sheets = coatsOf(foil).map(({ mix }) => sheetOf.get(mix))
  const looked = {
    firstLookMin: soonest(sheets.map((sheet) => sheet?.firstLookMin ?? null)),
    delicate: atHairline || isFine(plan) || isOpened(plan, zone),
  }
  const ready =
    goal && goal.toLevel <= goal.fromLevel
      ? offAtFirstLook(plan.mixes, firstLookMin(looked, pace.looks))
      : readyMin(goal, first !== null)
  return {
    id: foil.id,
    mapNumber: foil.mapNumber,
    kind: foil.kind,
    zone,
    side: sideOf(foil),
    group: homeOf(foil, plan)?.numeral ?? zone,
    placeMin: placing(foil.kind, foilsIn(foil, plan), choices, afterMin > 0 ? 1 : coats.length),
    limitMin: afterMin > 0 ? longestMin(sheetOf.get(foil.mix)) : Math.min(...sheets.map(longestMin)),
    mix: foil.mix,
    readyMin: goal ? ready : { [foil.mix]: ready[foil.mix] },
    productG: gramsOf(foil.mix, coats),
    ...(roots && {
      roots: {
        mix: roots.mix,
        first: roots.first,
        readyMin: ready[roots.mix],
        productG: gramsOf(roots.mix, coats),
        ...(afterMin > 0 && {
          later: {
            afterMin,
            placeMin: times(pace.rootsLaterMin, foilsIn(foil, plan)),
            limitMin: longestMin(sheetOf.get(roots.mix)),
          },
        }),
      },
    }),
    ...looked,
    ...(atHairline && { atHairline }),
    ...(first && { liftsFirst: first }),
  }
}

const times = ({ low, mid, high }: Range, count: number): Range => ({
  low: low * count,
  mid: mid * count,
  high: high * count,
})

const gramsOf = (mix: string, coats: CoatedFigures["coats"]): Range =>
  coats.find((coat) => coat.mix === mix)?.productG ?? none

/** The soonest look that any sheet asks for; null where none does. */
function soonest(looksMin: readonly (number | null)[]): number | null {
  const asked = looksMin.filter((minutes) => minutes !== null)
  return asked.length > 0 ? Math.min(...asked) : null
}

/** Hair that needs no lift comes off at its first check in whatever it is coated with, and never waits for the rest. */
const offAtFirstLook = (mixes: readonly Mix[], lookMin: number): TimedFoil["readyMin"] =>
  Object.fromEntries(mixes.map(({ id }) => [id, { low: 0, mid: lookMin, high: lookMin }]))

/** The pairs of hands, each with its own breaks; the second at its own pace, against the first's over these foils. */
function handsOf(foils: readonly TimedFoil[], choices: ServiceChoices): Person[] {
  const { hands, breaks, secondPace } = choices
  const restsOf = (pair: 1 | 2) => breaks.filter(({ of }) => of === undefined || of === pair)
  const firstOf = (kind: FoilKind) => placing(kind, 1, choices)
  const sum = (minutes: (kind: FoilKind) => Range) =>
    foils.reduce((total, { kind }) => total + minutes(kind).mid, 0)
  const secondShare =
    secondPace && foils.length > 0 ? sum((kind) => secondPace[kind] ?? firstOf(kind)) / sum(firstOf) : 1
  const first: Person = { paceShare: 1, breaks: restsOf(1) }
  return hands === 1 ? [first] : [first, { paceShare: secondShare, breaks: restsOf(2) }]
}

/** Minutes to place so many foils of a kind side by side, by the pace of the plan; more where two mixes go on each. */
export function placing(
  kind: FoilKind,
  foils: number,
  { paceMin, learntMin }: ServiceChoices,
  mixes = 1,
): Range {
  const learnt = learntMin?.[kind]
  const minutes = (end: keyof Range) =>
    (learnt ? learnt[end] * foils : paceMin[end] * foils + pace.extraMin[kind][end]) +
    (mixes - 1) * pace.secondMixMin[end] * foils
  return { low: minutes("low"), mid: minutes("mid"), high: minutes("high") }
}

/** Hair of a zone that was written down as porous or lightened before. */
const isOpened = ({ consultation }: Plan, zone: Zone) =>
  Object.values(consultation?.hair[zone] ?? {}).some(
    ({ porosity, history }) => porosity === "high" || history?.includes("lightened"),
  )

/** A foil belongs to the hairline where the middle of its parting lies within the sparser band along it. */
export function zoneOf({ parting }: Foil, plan: Plan): Zone {
  const head = headOf(plan)
  const middle = parting[parting.length >> 1]
  const { behindMm } = head.hairline.coordinates(middle)
  return behindMm <= tradeFigures.hairlineBandMm ? "hairline" : zoneAt(head, middle)
}

function timedMix({ id, developerVolume, ratio }: Mix, sheet: ProductSheet | undefined): TimedMix {
  return {
    id,
    developerVolume,
    onHeadPercent: onHeadPercent(labelPercent(developerVolume), ratio),
    mixingMin: pace.roundTheFoils.mixingMin,
    bowlG: (mostMixG.value - stayG.value) / (1 + stayShare.value),
    potLifeMin: potLifeMin(sheet),
    heatMostMin: sheet?.heatMin ?? 0,
  }
}

/** The same bowls as are weighed out for the mix. */
function bowlsOf(mix: Mix, foils: readonly TimedFoil[], sheet: ProductSheet | undefined, plan: Plan) {
  const inTurn = placedInTurn(foils.map((foil) => ({ ...foil, placeMin: foil.placeMin.mid })))
  const recipe = mixRecipe(mix, sheet ?? null, plan)
  const limits = { potLifeMin: potLifeMin(sheet), mostMixG: mostMixG.value }
  const bowls = planBowls(servedBy(inTurn, mix.id), recipe, limits)
  return bowls.map(({ sections }) => ({ mix: mix.id, foils: sections }))
}

function finishOf(plan: Plan, { isDried }: ServiceChoices): Service["finish"] {
  const { detanglingMin, rinsingMin, tonerInAndOutMin, dryingMin } = pace.roundTheFoils
  const toners = tonesOfPlan(plan).map(({ zone, minutes }) => ({
    zone,
    minutes: {
      low: minutes.low + tonerInAndOutMin.low,
      mid: minutes.mid + tonerInAndOutMin.mid,
      high: minutes.high + tonerInAndOutMin.high,
    },
  }))
  return { detanglingMin, rinsingMin, dryingMin: isDried ? dryingMin : none, toners }
}
