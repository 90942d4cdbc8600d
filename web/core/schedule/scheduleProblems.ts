import type { Range } from "../../../geometry/hair/tradeFigures"
import { liftCeilingC } from "../../../presets/timing/lift"
import { heatHabits } from "../../../presets/timing/pace"
import { numberText } from "../text/numberText"
import { mixesUsed } from "./mixesUsed"
import type { Service, TimedFoil, TimedMix } from "./scheduleInput"

/** Why a service cannot be timed: one sentence a problem, none when it can. */
export function serviceProblems(service: Service): readonly string[] {
  if (service.foils.length === 0) return ["There are no foils to time: draw one first."]
  const mixes = new Map(service.mixes.map((mix) => [mix.id, mix]))
  return [
    ...handsProblems(service),
    ...repeated(service.foils).map(({ mapNumber }) => `Foil ${mapNumber} is in the plan twice.`),
    ...service.foils.flatMap((foil) => foilProblems(foil, mixes)),
    ...service.mixes.flatMap(mixProblems),
    ...bowlProblems(service),
    ...(service.looks.everyMin > 0 ? [] : ["Looks must be more than 0 minutes apart."]),
  ]
}

/** Why heat may not be used in this service, or null. The sheet decides, and common practice narrows it. */
export function heatRefusal({ foils, mixes, heat }: Service): string | null {
  if (!heat) return null
  const used = mixesUsed(mixes, foils)
  const most = Math.min(heatHabits.mostMin, ...used.map(({ heatMostMin }) => heatMostMin))
  const strong = used.find(({ developerVolume }) => developerVolume >= heatHabits.forbiddenVolume)
  if (heat.warmthC !== null && heat.warmthC > liftCeilingC)
    return `No heat: no lift is worked out above ${liftCeilingC} °C, and ${numberText(heat.warmthC)} °C was given.`
  if (most <= 0) return "No heat: the product sheet does not allow it."
  if (strong) return `No heat: mix ${strong.id} is made with ${strong.developerVolume} volume.`
  if (foils.some(({ zone }) => zone === "hairline")) return "No heat: there are foils at the hairline."
  if (foils.some(({ kind }) => kind === "backcomb"))
    return "No heat: a backcombed cushion lies near the root."
  if (heat.minutes > most)
    return `Heat for ${numberText(most)} minutes at most: ${numberText(heat.minutes)} were asked for.`
  return heat.minutes > 0 ? null : "Heat must last more than 0 minutes."
}

function handsProblems({ hands }: Service): string[] {
  const count = hands.length === 1 || hands.length === 2
  return [
    ...(count ? [] : [`One or two pairs of hands can be planned, not ${hands.length}.`]),
    ...(hands.every(({ paceShare }) => paceShare > 0) ? [] : ["A person's pace must be above 0."]),
    ...(hands.every(({ breaks }) => breaks.every(({ fromMin, toMin }) => toMin > fromMin))
      ? []
      : ["A break must end after it begins."]),
  ]
}

function foilProblems(foil: TimedFoil, mixes: ReadonlyMap<string, TimedMix>): string[] {
  const problems: string[] = []
  if (!(isRange(foil.placeMin) && foil.placeMin.low > 0 && Number.isFinite(foil.placeMin.high)))
    problems.push(
      `Foil ${foil.mapNumber}: the pace is ${numberText(foil.placeMin.mid)}; give minutes a foil above 0.`,
    )
  if (!(foil.limitMin > 0))
    problems.push(`Foil ${foil.mapNumber}: the product's longest time must be above 0 minutes.`)
  if (!mixes.has(foil.mix)) problems.push(`Foil ${foil.mapNumber}: there is no mix ${foil.mix}.`)
  const ready = foil.readyMin[foil.mix]
  if (!(ready && isRange(ready) && ready.low >= 0))
    problems.push(`Foil ${foil.mapNumber}: with mix ${foil.mix} it is not known when it may be ready.`)
  return problems
}

function bowlProblems({ foils, bowls }: Service): string[] {
  const served = new Set(bowls?.flatMap((bowl) => bowl.foils.map((id) => `${bowl.mix} ${id}`)))
  return foils
    .filter(({ id, mix }) => bowls && !served.has(`${mix} ${id}`))
    .map(({ mapNumber, mix }) => `Foil ${mapNumber}: no bowl of mix ${mix} serves it.`)
}

function mixProblems({ id, bowlG, potLifeMin }: TimedMix): string[] {
  return [
    ...(bowlG > 0 ? [] : [`Mix ${id}: a bowl must hold more than 0 g.`]),
    ...(potLifeMin > 0 ? [] : [`Mix ${id}: a bowl must last longer than 0 minutes.`]),
  ]
}

const isRange = ({ low, mid, high }: Range) => low <= mid && mid <= high

const repeated = (foils: readonly TimedFoil[]) =>
  foils.filter(({ id }, at) => foils.findIndex((foil) => foil.id === id) < at)
