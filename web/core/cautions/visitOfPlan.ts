import { coatsOf, type Foil, isCoatedWith, isFoil, rootsOf } from "../../../geometry/section/section"
import { rootDistanceMm } from "../../../presets/placement/foils"
import { newConsultation } from "../document/consultation"
import { sheetOf } from "../document/salon"
import type { Mix, Plan } from "../document/schema"
import { newToning, type TonerChoice } from "../document/toning"
import { takesAtHairline } from "../figures/hairAtHairline"
import { headOf } from "../figures/measured"
import { traitsOf } from "../kinds/kindRecords"
import { saidPiece } from "../kinds/saidPiece"
import { labelPercent, onHeadPercent } from "../mixing/strength"
import { type CoatedTwice, coatedTwice } from "../regrowth/coatedTwice"
import type { Now } from "../text/zonedTime"
import { daysOf } from "./asking/questions"
import { checkVisit } from "./cautions"
import { type PlannedMix, type PlannedTwice, tonerIds, type Visit } from "./rules/rule"

/** A plan as the rules of the visit see it; `begunAt`: when the service began that goes on. */
export const visitOf = (plan: Plan, now: Now, begunAt: string | null = null): Visit => ({
  consultation: plan.consultation ?? newConsultation(),
  standing: plan.client.allergies ?? [],
  mixes: mixesAndToners(plan),
  twice: coatedTwice(plan).flatMap(plannedTwice),
  now,
  days: daysOf(plan, now, begunAt),
})

/** Lightened hair that a foil would coat, by mix: of two along its strand each has a stretch of its own. */
function plannedTwice({ foil, fromMm, toMm }: CoatedTwice): PlannedTwice[] {
  const rootsEndMm = rootsOf(foil)?.toMm ?? 0
  return coatsOf(foil)
    .map(({ part, mix }) => ({
      foil: foil.mapNumber,
      ...saidPiece([foil]),
      mix,
      fromMm: part === "ends" ? Math.max(fromMm, rootsEndMm) : fromMm,
      toMm: part === "roots" ? Math.min(toMm, rootsEndMm) : toMm,
    }))
    .filter((stretch) => stretch.toMm > stretch.fromMm)
}

/** All that is mixed in a plan, lightener and toner. */
export const mixesAndToners = (plan: Plan): PlannedMix[] => [...mixesPlanned(plan), ...tonersPlanned(plan)]

/** The mixes as the rules see them. */
export function mixesPlanned(plan: Plan): PlannedMix[] {
  const foils = plan.sections.filter(isFoil)
  return plan.mixes.map(({ id, product, developerVolume, ratio }): PlannedMix => {
    const own = foils.filter((foil) => isCoatedWith(foil, id))
    const over = strongerRoots(own, id, plan)
    return {
      id,
      product,
      sheet: sheetOf(product, plan),
      developerVolume,
      ratio,
      heatMin: plan.timing?.heatMin ?? 0,
      isOpen: own.some(({ carrier }) => carrier.kind === "open-air"),
      near: {
        hairline: own.some((foil) => takesAtHairline(foil, headOf(plan))),
        scalp: own.some((foil) => startOf(foil, id) < rootDistanceMm.tight.range[0]),
        cushion: own.some((foil) => traitsOf(foil).hasCushion),
      },
      ...(over && { over }),
    }
  })
}

/** How near the scalp a mix comes: with another on the roots it begins where that ends. */
const startOf = (foil: Foil, id: string) =>
  (foil.mix === id ? rootsOf(foil)?.toMm : undefined) ?? foil.rootDistanceMm

/** The weakest mix that this one is stronger than and lies above, on the roots of the same strand. */
function strongerRoots(foils: readonly Foil[], id: string, { mixes }: Plan): PlannedMix["over"] {
  const strengthOf = (mix: Mix) => onHeadPercent(labelPercent(mix.developerVolume), mix.ratio)
  const own = mixes.find((mix) => mix.id === id)
  const under = mixes.filter((mix) => foils.some((foil) => rootsOf(foil)?.mix === id && foil.mix === mix.id))
  const [weakest] = under.toSorted((a, b) => strengthOf(a) - strengthOf(b))
  if (!own || !weakest || strengthOf(own) <= strengthOf(weakest) + 1e-9) return undefined
  return { mix: weakest.id, volume: weakest.developerVolume }
}

/** What is toned with, as the rules see it: a mix like any other. A root shade counts where a root melt is planned. */
function tonersPlanned(plan: Plan): PlannedMix[] {
  const { toner, rootShade } = plan.toning ?? newToning()
  const isMelted = (plan.consultation?.rootMeltMm ?? null) !== null
  return [
    ...(toner ? [tonerPlanned(toner, tonerIds.toner, plan)] : []),
    ...(rootShade && isMelted ? [tonerPlanned(rootShade, tonerIds.rootShade, plan)] : []),
  ]
}

const tonerPlanned = (
  { product, developerVolume, parts }: TonerChoice,
  id: string,
  plan: Plan,
): PlannedMix => ({
  id,
  product,
  sheet: sheetOf(product, plan),
  developerVolume: developerVolume ?? 0,
  ratio: { lightener: 1, developer: parts },
  heatMin: 0,
  near: { hairline: false, scalp: id === tonerIds.rootShade, cushion: false },
})

/** The stops and cautions of a plan at a moment. */
export const checkPlan = (plan: Plan, now: Now) => checkVisit(visitOf(plan, now))
