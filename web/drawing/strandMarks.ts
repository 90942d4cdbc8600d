import { viewPoint } from "../../geometry/surface/frames"
import type { Growth } from "../core/regrowth/growth"
import type { Mark } from "./mark"

/** One strand from the scalp, mm along it: where product goes (null: nowhere), and where lightened hair begins (null: none is). */
export type Strand = { coat: { fromMm: number; toMm: number } | null; begins: Growth | null }

/** How far the marks reach from the middle of the strand, mm. */
export const strandReachMm = 3.4
const scalpMm = 2
const coatMm = 0.7
const hatchMm = 1.6
const hatchStepMm = 2

/**
 * A strand on its side, the scalp at 0, as far as there is room: thin where it is left, broad where product goes, hatched
 * where it is lightened, and the line that product must not pass, where that may begin first.
 */
export function strandMarks({ coat, begins }: Strand, lengthMm: number): Mark[] {
  const limitMm = begins && begins.lowMm < lengthMm ? begins.lowMm : null
  return [
    { kind: "line", path: upright(0, scalpMm), ink: "head-bold" },
    { kind: "line", path: [viewPoint(0, 0), viewPoint(lengthMm, 0)], ink: "head-fine" },
    ...(limitMm === null ? [] : [hatchFrom(limitMm, lengthMm)]),
    ...(coat && coat.fromMm < lengthMm ? [coated(coat.fromMm, Math.min(coat.toMm, lengthMm))] : []),
    ...(limitMm === null
      ? []
      : [{ kind: "line" as const, path: upright(limitMm, strandReachMm), ink: "not-past" as const }]),
  ]
}

const upright = (x: number, reachMm: number) => [viewPoint(x, -reachMm), viewPoint(x, reachMm)]

const coated = (fromMm: number, toMm: number): Mark => ({
  kind: "area",
  path: [
    viewPoint(fromMm, -coatMm),
    viewPoint(toMm, -coatMm),
    viewPoint(toMm, coatMm),
    viewPoint(fromMm, coatMm),
  ],
  ink: "strand-coat",
})

function hatchFrom(fromMm: number, toMm: number): Mark {
  const strokes = Array.from({ length: Math.floor((toMm - fromMm) / hatchStepMm) }, (_, i) => {
    const x = fromMm + i * hatchStepMm
    return [viewPoint(x, -hatchMm), viewPoint(x + hatchStepMm, hatchMm)] as const
  })
  return { kind: "hatch", segments: strokes, ink: "left-out-hatch" }
}
