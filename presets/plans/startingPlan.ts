import { lengthCm } from "../client/hairTypes"
import { assumption, commonPractice, figure } from "../figure/figure"

/** What a plan starts from before anything is known of the client. */

/** Medium hair to the collarbone all round. */
export const startingLengthCm = {
  front: lengthCm.collarbone.value,
  sides: lengthCm.collarbone.value,
  back: lengthCm.collarbone.value,
}

/** The sheet a plan starts from, in houseProducts.ts: its name alone, since the map does not wait for the sheets. */
export const startingProduct = "House powder (invented)"

/** Parts of lightener to parts of developer for foils. */
export const startingRatio = { lightener: 1, developer: figure(2, [1.5, 2.5], commonPractice) }

/** How high a section is held from the head for foils. */
export const usualElevationDeg = figure(90, [45, 135], commonPractice)

/** How wide a band of hair is left out between foils or at the hairline. */
export const leftOutDepthMm = figure(3, [1, 10], assumption)

/** How wide a veil is that falls over what lies under it, and how far back one goes over the parting, mm. */
export const veilDepthMm = figure(8, [3, 15], commonPractice)
export const veilReachMm = figure(80, [50, 120], assumption)
