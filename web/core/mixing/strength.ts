import {
  labelPercentPerVolume,
  legalLimitPercent,
  peroxideDensities,
} from "../../../presets/formula/developers"

/**
 * Strengths of developer. "V volume" means that 1 volume of it gives off V volumes of oxygen (0 C, 101.325 kPa)
 * by 2 H2O2 -> 2 H2O + O2. Three scales: volume; % w/v, g in 100 mL; % w/w, g in 100 g.
 */
const peroxideGPerMol = 34.0147
const gasLPerMol = 22.414

/** g of peroxide in 100 mL, a volume: 2 mol of peroxide for each mol of oxygen. 0.30351. */
const percentWvPerVolume = (2 * peroxideGPerMol) / gasLPerMol / 10

/** A mix: parts by mass. */
export type MixRatio = { lightener: number; developer: number }

export const volumeToPercentWv = (volume: number) => volume * percentWvPerVolume
export const percentWvToVolume = (percentWv: number) => percentWv / percentWvPerVolume
export const percentWwToWv = (percentWw: number) => percentWw * densityGPerMl(percentWw)
export const percentWwToVolume = (percentWw: number) => percentWvToVolume(percentWwToWv(percentWw))
export const volumeToPercentWw = (volume: number) => percentWvToWw(volumeToPercentWv(volume))

/** The way back from `percentWwToWv`: each round leaves at most a sixth of the error. */
export function percentWvToWw(percentWv: number): number {
  let percentWw = percentWv
  for (let round = 0; round < 24; round++) percentWw = percentWv / densityGPerMl(percentWw)
  return percentWw
}

/** Density at 20 C, on straight lines between the handbook's rows, the last one carried on. */
export function densityGPerMl(percentWw: number): number {
  const after = peroxideDensities.findIndex((row) => row.percentWw >= percentWw)
  const upper = after === -1 ? peroxideDensities.length - 1 : Math.max(1, after)
  const [low, high] = [peroxideDensities[upper - 1], peroxideDensities[upper]]
  const share = (percentWw - low.percentWw) / (high.percentWw - low.percentWw)
  return low.gPerMl + share * (high.gPerMl - low.gPerMl)
}

/** What the label says: 10 / 20 / 30 / 40 volume are 3 / 6 / 9 / 12 %, and blends lie between. */
export const labelPercent = (volume: number) => volume * labelPercentPerVolume
export const labelVolume = (percent: number) => percent / labelPercentPerVolume

/** Strength once the developer is in the bowl: peroxide is spread over the whole mix. */
export const onHeadPercent = (developerPercent: number, { lightener, developer }: MixRatio) =>
  (developerPercent * developer) / (lightener + developer)

/** Whether what goes on the head is stronger than the law allows; a rounding error is not. */
export const isOverLegalLimit = (percent: number) => percent > legalLimitPercent + 1e-9
