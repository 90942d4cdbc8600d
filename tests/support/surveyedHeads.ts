import { caliperAxes } from "../../geometry/scalp/caliperAxes"
import { type CaliperMm, headTapes, type TapeMm } from "../../geometry/scalp/headMeasures"
import { headSurface } from "../../geometry/scalp/headSurface"
import { tautMm } from "../../geometry/surface/tape"
import type { Vec3 } from "../../geometry/surface/vec3"
import { readCsv } from "./readCsv"

/** A person of the 1988 survey: what a caliper reads, the head of the model that has it, and the three tapes. */
export type SurveyedHead = { caliper: CaliperMm; axes: Vec3; tapes: TapeMm }

/**
 * Means of length, breadth and coronal arc over the rows, height from tragion to top (headboard, TR-89/044), and how
 * height goes with length and breadth (ANSUR II, TR-15/007: head-regressions, residual 6.0 mm).
 */
const sexes = {
  F: { length: 187.15, breadth: 144.42, height: 123.5, coronal: 336.07, perLength: 0.201, perBreadth: 0.335 },
  M: { length: 197.17, breadth: 151.7, height: 131, coronal: 353.56, perLength: 0.207, perBreadth: 0.317 },
}
const heightResidualMm = 6
/** Coronal arc in length, breadth and height: USAF 1967, residual 7.6 mm. */
const coronalLine = { perLength: 0.179, perBreadth: 0.907, perHeight: 1.162, residualMm: 7.6 }

/** No survey has the tape from front hairline to nape: it is the model's own, over as much hair as presets say. */
const hairFrontToNape = 1.015
/** How far a reading is off, mm, one standard deviation, beside what the survey's own tapes were off. */
export type TapeNoise = TapeMm

/**
 * Everyone of one sex in ansur88-head-dev.csv. Length, breadth, circumference and coronal arc are theirs; height, which
 * the rows do not hold, is drawn from what the other surveys say of a head with this length, breadth and arc.
 */
export function surveyedHeads(sex: keyof typeof sexes, noise: TapeNoise, seed = 1988): SurveyedHead[] {
  const normal = generator(seed)
  const over = headTapes(headSurface([1, 1, 1]))
  return readCsv("ansur88-head-dev.csv")
    .filter((row) => row.sex === sex)
    .map((row) => {
      const [lengthMm, breadthMm] = [Number(row.length), Number(row.breadth)]
      const coronalMm = Number(row.bitr_coronal_arc)
      const heightMm = drawHeight(sexes[sex], lengthMm, breadthMm, coronalMm, normal)
      const caliper = { lengthMm, breadthMm, heightMm }
      const axes = caliperAxes(caliper)
      const tapes = {
        aroundMm: Number(row.circ) + noise.aroundMm * normal(),
        overMm: coronalMm + noise.overMm * normal(),
        frontToNapeMm: hairFrontToNape * tautMm(over.frontToNapeMm, axes) + noise.frontToNapeMm * normal(),
      }
      return { caliper, axes, tapes }
    })
}

function drawHeight(
  mean: (typeof sexes)["F"],
  lengthMm: number,
  breadthMm: number,
  coronalMm: number,
  normal: () => number,
) {
  const [longer, broader] = [lengthMm - mean.length, breadthMm - mean.breadth]
  const expected = mean.height + mean.perLength * longer + mean.perBreadth * broader
  const arc =
    mean.coronal +
    coronalLine.perLength * longer +
    coronalLine.perBreadth * broader +
    coronalLine.perHeight * (expected - mean.height)
  const precision = 1 / heightResidualMm ** 2 + (coronalLine.perHeight / coronalLine.residualMm) ** 2
  const move = (coronalLine.perHeight * (coronalMm - arc)) / coronalLine.residualMm ** 2 / precision
  return expected + move + normal() / Math.sqrt(precision)
}

/** Park and Miller's generator, and Box and Muller's normal numbers: the same on every machine. */
function generator(seed: number) {
  let state = seed
  const even = () => {
    state = (state * 48271) % 2147483647
    return state / 2147483647
  }
  return () => Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even())
}
