import { type PlannedMix, tonerIds } from "./rule"

const isToner = ({ id }: PlannedMix) => id === tonerIds.toner || id === tonerIds.rootShade

/** A product without a sheet may be one, unless it is there to tone. */
export const isLightener = (mix: PlannedMix) => (mix.sheet ? mix.sheet.kind === "lightener" : !isToner(mix))

/** Dye, toner and root shade always, a toner with developer even without its sheet; anything else where its sheet asks. */
export const isTestAsked = (mix: PlannedMix) =>
  mix.sheet
    ? mix.sheet.kind === "oxidative-toner" || mix.sheet.kind === "root-shade" || mix.sheet.alertTest === true
    : isToner(mix) && mix.developerVolume > 0
