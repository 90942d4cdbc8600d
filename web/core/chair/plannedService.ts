import { isFoil, rootsOf } from "../../../geometry/section/section"
import { mixesOfPlan } from "../bowls/mixesOfPlan"
import { type TonerInPlan, tonersOfPlan } from "../bowls/toners"
import { sheetOf } from "../document/salon"
import type { Plan } from "../document/schema"
import type { RecordedFoil } from "../document/serviceRecord"
import { targetOfPlan } from "../lift/liftOfPlan"
import type { TimedFoil } from "../schedule/scheduleInput"
import { firstLookMin } from "../schedule/scheduleLooks"
import type { TimedPlan } from "../schedule/timedPlan"
import type { BowlTimes, FoilTimes } from "../schedule/timing"
import type { ChairBowl, ChairToner } from "./chair"

type Timed = Extract<TimedPlan, { ok: true }>

/** What a service is to be, as the plan has it at that moment: kept from then on, and never worked out again. */
export type PlannedService = {
  foils: readonly RecordedFoil[]
  bowls: readonly ChairBowl[]
  toners: readonly ChairToner[]
  heatMin: number | undefined
}

export const plannedService = (plan: Plan, timed: Timed): PlannedService => ({
  foils: foilsOf(plan, timed),
  bowls: timed.schedule.bowls.map((bowl) => bowlOf(bowl, plan)),
  toners: plan.sections.length > 0 ? tonersOfPlan(plan).flatMap((toner) => tonersOn(toner, plan)) : [],
  heatMin: timed.schedule.heat ? timed.service.heat?.minutes : undefined,
})

function foilsOf(plan: Plan, { service, schedule }: Timed): RecordedFoil[] {
  const timesOf = new Map(schedule.foils.map((times) => [times.id, times]))
  const goalLevel = targetOfPlan(plan)
  return service.foils.map((foil) => {
    const times = timesOf.get(foil.id)
    return {
      id: foil.id,
      mapNumber: foil.mapNumber,
      kind: foil.kind,
      mix: foil.mix,
      ...rootsIn(plan, foil.id),
      ...laterIn(foil, times),
      ...(service.hands.length === 2 && { lane: laneOf(foil, plan) }),
      ...(goalLevel !== null && { goalLevel }),
      limitMin: foil.limitMin,
      firstLookMin: firstLookMin(foil, service.looks),
      plannedOnMin: times?.onAtMin ?? 0,
      plannedMinutesOn: times?.onMin ?? 0,
    }
  })
}

/** How far the mix of its roots reaches, which the clock does not ask. */
function rootsIn({ sections }: Plan, id: string): Pick<RecordedFoil, "roots"> {
  const drawn = sections.find((section) => section.id === id)
  const roots = drawn && isFoil(drawn) && rootsOf(drawn)
  return roots ? { roots } : {}
}

function laterIn({ roots }: TimedFoil, times: FoilTimes | undefined): Pick<RecordedFoil, "rootsLater"> {
  if (!roots?.later) return {}
  const { limitMin, afterMin } = roots.later
  const plannedAfterMin = times?.rootsOnAtMin === undefined ? afterMin : times.rootsOnAtMin - times.onAtMin
  return { rootsLater: { limitMin, plannedAfterMin } }
}

/** Each side has its own lane; what lies in the middle is the colourist's. */
const laneOf = ({ side }: TimedFoil, { timing }: Plan): 1 | 2 =>
  side === (timing?.assistantSide ?? "right") ? 2 : 1

function bowlOf({ mix, foils, mixedAtMin, useByMin }: BowlTimes, plan: Plan): ChairBowl {
  const planned = mixesOfPlan(plan).find((each) => each.mix.id === mix)
  const made = planned?.made?.bowls.find(({ sections }) => sections.includes(foils[0]))
  const bowl = { mix, foils, potLifeMin: useByMin - mixedAtMin }
  if (!planned || !made) return bowl
  const { product, developerVolume, ratio } = planned.mix
  const { lightenerG, developerG } = made
  const additives = made.additives.map(({ name, grams }) => ({ name, grams }))
  return {
    ...bowl,
    product,
    developerVolume,
    ratio,
    lightenerG,
    developerG,
    ...(additives.length > 0 && { additives }),
  }
}

/** A toner by zone, each with its own clock; what zones of one shade share was mixed once, and is told at the first. */
const tonersOn = ({ tones, choice, bowl }: TonerInPlan, plan: Plan): ChairToner[] =>
  tones.map(({ zone, minutes }, at) => ({
    zone,
    product: choice?.product ?? null,
    developerVolume: choice?.developerVolume ?? null,
    productG: at === 0 && bowl ? bowl.lightenerG : null,
    developerG: at === 0 && bowl ? bowl.developerG : null,
    ...(at === 0 && bowl && { clearG: bowl.clearG }),
    plannedMin: minutes.mid,
    limitMin: (choice && sheetOf(choice.product, plan)?.longestMin) ?? null,
  }))
