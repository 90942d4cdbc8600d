import type { Head } from "../scalp/head"
import { zonePlanes } from "../scalp/zones"
import { smoothStep } from "../surface/smoothStep"
import type { Vec3 } from "../surface/vec3"
import type { Range, TradeFigures } from "./tradeFigures"

/**
 * A head of hair: hairs per cm2, the mean over the head, the fibre as the diameter in micrometres of the circle with its
 * mean cross-section, and how long it is at the front hairline, at the sides and at the back, cm.
 */
export type Hair = {
  densityPerCm2: number
  fibreUm: number
  lengthCm: { front: number; sides: number; back: number }
}

/**
 * Hairs per cm2 at a point of the scalp (mm, head frame): the chosen density times the factor of its region. Who knows
 * how far it is from the hairline, or that it is past the sparser band, may say so.
 */
export function densityAt(
  head: Head,
  hair: Hair,
  figures: TradeFigures,
  point: Vec3,
  edgeMm: number = head.hairline.distanceMm(point),
): number {
  const { hairlineBandMm, hairlineBlendMm, density } = figures
  const reach = hairlineBlendMm / 2
  const inner = smoothStep(hairlineBandMm - reach, hairlineBandMm + reach, edgeMm)
  return hair.densityPerCm2 * mix(density.hairlineBand, regionFactor(head, figures, point), inner)
}

function regionFactor({ axes }: Head, { density, regionBlendMm }: TradeFigures, point: Vec3): number {
  const reach = regionBlendMm / 2
  const y = point[1] / axes[1]
  const above = smoothStep(-reach, reach, point[2] / axes[2] - zonePlanes.topZ)
  const behind = smoothStep(reach, -reach, y - zonePlanes.backY)
  const top = mix(density.vertex, density.frontal, smoothStep(-reach, reach, y))
  return mix(mix(density.side, density.occipital, behind), top, above)
}

/** From here on, mm from the hairline, the sparser band is passed. */
export const pastBandMm = ({ hairlineBandMm, hairlineBlendMm }: TradeFigures) =>
  hairlineBandMm + hairlineBlendMm / 2

/** Length of the hair growing from a point of the scalp (mm, head frame), cm. */
export function lengthCmAt({ axes }: Head, { lengthCm }: Hair, figures: TradeFigures, point: Vec3): number {
  const y = point[1] / axes[1]
  const front = smoothStep(figures.frontLengthMm.from, figures.frontLengthMm.to, y)
  const back = smoothStep(figures.backLengthMm.from, figures.backLengthMm.to, y)
  return lengthCm.sides + front * (lengthCm.front - lengthCm.sides) + back * (lengthCm.back - lengthCm.sides)
}

/** Grams of one centimetre of one hair: density x pi d2 / 4 (hair mass per length, Robbins). */
export const linearGPerCm = (fibreUm: number, hairGPerCm3: number) =>
  (hairGPerCm3 * Math.PI * (fibreUm * 1e-4) ** 2) / 4

/** How many hairs there may be when so many are counted from density and area. */
export const hairsRange = (hairs: number, { hairsFactor }: TradeFigures): Range => ({
  low: hairs * hairsFactor.low,
  mid: hairs * hairsFactor.mid,
  high: hairs * hairsFactor.high,
})

const mix = (from: number, to: number, share: number) => from + (to - from) * share
