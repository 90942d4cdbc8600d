import { fitAxes } from "../../geometry/scalp/fit"
import { hairlineForms } from "../../geometry/scalp/hairlineLandmarks"
import { type Head, makeHeadFromAxes } from "../../geometry/scalp/head"
import { headFigures } from "../../presets/client/headSizes"
import { readCsv } from "./readCsv"

/** Heads drawn from the spreads of the surveys in head-summary.csv (length, breadth, tragion to top), always the same ones. */
export function randomHeads(count: number): Head[] {
  const random = generator(20260309)
  const women = readCsv("head-summary.csv").filter(
    ({ survey, sex }) => survey === "ANSUR II 2012" && sex === "F",
  )
  const drawn = (dimension: string) => {
    const row = women.find(({ dimension_mm }) => dimension_mm === dimension)
    if (!row) throw new Error(`head-summary.csv has no ${dimension}`)
    return Number(row.mean) + Number(row.sd) * Math.max(-2.5, Math.min(2.5, normal(random)))
  }
  return Array.from({ length: count }, (_, i) => {
    const size = {
      kind: "caliper",
      lengthMm: drawn("length"),
      breadthMm: drawn("breadth"),
      heightMm: drawn("tragion_top"),
    } as const
    return makeHeadFromAxes(fitAxes(size, headFigures), hairlineForms[i % hairlineForms.length])
  })
}

/** Park and Miller's generator: the same numbers on every machine. */
function generator(seed: number) {
  let state = seed
  return () => {
    state = (state * 16807) % 2147483647
    return state / 2147483647
  }
}

/** Box and Muller. */
const normal = (random: () => number) => Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random())
