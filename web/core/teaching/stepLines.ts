import { edgeBends } from "../../../geometry/painted/edge"
import type { EdgeShape } from "../../../geometry/painted/painting"
import { type Direction, plainDirection } from "../../../geometry/parting/direction"
import type { LandmarkName } from "../../../geometry/scalp/hairlineLandmarks"
import type { Head } from "../../../geometry/scalp/head"
import { nearestLandmark } from "../../../geometry/scalp/nearestLandmark"
import {
  type CarrierKind,
  type Foil,
  type FoilKind,
  type FoilLie,
  isFoil,
  type Section,
  type Stitching,
} from "../../../geometry/section/section"
import { kindOf } from "../../../geometry/section/sectionKinds"
import type { SurfacePoint } from "../../../geometry/surface/frames"
import { rootDistanceMm } from "../../../presets/placement/foils"
import { seeThroughMm, strokes } from "../../../presets/sheets/teaching"
import type { Plan } from "../document/schema"
import { foilsIn } from "../figures/foilCount"
import { figuresOf, headOf } from "../figures/measured"
import { stitchesOf } from "../figures/stitchesOf"
import { traitsOf, valuesOf } from "../kinds/kindRecords"
import { type CoatCode, coatCodes } from "../placement/coatCodes"
import { directionIn, type Side, sideOf } from "../placement/places"
import type { TeachingStep } from "./teachingSteps"

/** What a step is called; `isPair` where both sides are worked in it. */
export type StepTitleCode =
  | { code: "leave-out"; name: string; isPair: boolean; side: Side }
  | { code: "foils"; kind: FoilKind; numbers: readonly number[]; isPair: boolean; side: Side }

/** Where a parting runs, told by the hairline: whole mm behind it, from one landmark to another. */
export type RunCode = {
  from: { landmark: LandmarkName; behindMm: number }
  to: { landmark: LandmarkName; behindMm: number }
  /** As far behind the hairline all the way. */
  isEven: boolean
  /** From one side of the head to the other. */
  isAcross: boolean
}

/** One thing the hands do at a step. */
export type StepLineCode =
  | {
      code: "part"
      run: RunCode
      direction: Direction
      partingMm: number
      taken: "front" | "behind"
      depthMm: { start: number; end: number }
      /** Rows of the same, and the hair left between, mm; null for a single row. */
      rows: number
      gapMm: number | null
    }
  | { code: "leave" }
  | { code: "hold"; elevationDeg: number; overDirectionDeg: number }
  | {
      code: "take"
      /** Null where all of it is taken; then whether light is seen through it. */
      stitching: Stitching | null
      isSeenThrough: boolean
      pushed: { share: number; leastStrokes: number; mostStrokes: number; cushionMm: number } | null
    }
  | {
      code: "place"
      carrier: CarrierKind
      count: number
      widthMm: number
      lengthMm: number
      isTight: boolean
      lie: FoilLie
    }
  /** From so far off the scalp, mm, and no nearer to it than a share of the strand, to a share of it. */
  | {
      code: "product"
      coats: readonly CoatCode[]
      startMm: number
      isPastCushion: boolean
      fromShare: number
      toShare: number
      faces: 1 | 2
    }
  /** On the panel laid flat: from a share of the length at the edge's highest to one at its lowest. */
  | {
      code: "paint"
      mix: string
      edge: EdgeShape
      highShare: number
      lowShare: number
      toShare: number
      featherMm: number
      faces: 1 | 2
    }
  | { code: "keep-moist"; isUnderFilm: boolean }
  | { code: "other-side"; isEachRow: boolean }

export function stepTitle({ rows: [first], sections, isPair }: TeachingStep): StepTitleCode {
  const side = sideOf(first)
  if (!isFoil(first)) return { code: "leave-out", name: first.name, isPair, side }
  const numbers = sections.filter(isFoil).map(({ mapNumber }) => mapNumber)
  return { code: "foils", kind: first.kind, numbers, isPair, side }
}

/** Part, hold, take up, place and coat, in the order the hands go. */
export function stepLines(step: TeachingStep, plan: Plan): StepLineCode[] {
  const [first] = step.rows
  const part = partLine(step, plan)
  if (!isFoil(first)) return [part, { code: "leave" }]
  const { elevationDeg, overDirectionDeg } = first
  return [
    part,
    { code: "hold", elevationDeg, overDirectionDeg },
    ...(paintLines(first) ?? [takeLine(first), placeLine(first, plan), productLine(first)]),
    ...(step.isPair
      ? [{ code: "other-side" as const, isEachRow: step.isEachRow && step.rows.length > 1 }]
      : []),
  ]
}

function partLine({ rows, gapMm }: TeachingStep, plan: Plan): StepLineCode {
  const [first] = rows
  const head = headOf(plan)
  const run = runOf(first, head)
  return {
    code: "part",
    run,
    direction: run.isEven ? directionIn(first, head) : ownDirection(first, head),
    partingMm: figuresOf(first, plan).partingMm,
    taken: first.taken,
    depthMm: first.depthMm,
    rows: rows.length,
    gapMm,
  }
}

/** What drifts away from the hairline is not told to run along it, however little it drifts for its length. */
function ownDirection({ parting }: Section, { surface }: Head): Direction {
  return plainDirection(surface, parting[0], parting[parting.length - 1])
}

const evenMm = 2

function runOf(section: Section, head: Head): RunCode {
  const { parting } = section
  const ends = [parting[0], parting[parting.length >> 1], parting[parting.length - 1]]
  const [from, middle, to] = ends.map((at) => spotOf(at, head))
  const isEven = [middle, to].every(({ behindMm }) => Math.abs(behindMm - from.behindMm) <= evenMm)
  const isAcross = sideOf(section) === "centre"
  const behindMm = isEven ? Math.max(0, middle.behindMm) : null
  const spot = (at: typeof from) => ({ landmark: at.landmark, behindMm: behindMm ?? at.behindMm })
  return { from: spot(from), to: spot(to), isEven, isAcross }
}

function spotOf(at: SurfacePoint, { hairline }: Head) {
  const { alongMm, behindMm } = hairline.coordinates(at)
  return { behindMm, landmark: nearestLandmark(hairline, alongMm).name }
}

/** What is painted is laid on no foil; null for all else. */
function paintLines(foil: Foil): StepLineCode[] | null {
  const { painting } = valuesOf(foil)
  if (!painting) return null
  const { mix, faces, strand, carrier } = foil
  const shares = edgeBends(painting, strand.from).map(([, share]) => share)
  return [
    {
      code: "paint",
      mix,
      edge: painting.edge,
      highShare: Math.min(...shares),
      lowShare: Math.max(...shares),
      toShare: strand.to,
      featherMm: painting.featherMm,
      faces,
    },
    { code: "keep-moist", isUnderFilm: carrier.kind === "film" },
  ]
}

function takeLine(foil: Foil): StepLineCode {
  const { depthMm } = foil
  const pushed = valuesOf(foil).backcombing
  const [leastStrokes, mostStrokes] = strokes.range
  return {
    code: "take",
    stitching: stitchesOf(foil),
    isSeenThrough: Math.max(depthMm.start, depthMm.end) <= seeThroughMm,
    pushed: pushed
      ? { share: pushed.pushedShare, leastStrokes, mostStrokes, cushionMm: pushed.cushionMm }
      : null,
  }
}

function placeLine(foil: Foil, plan: Plan): StepLineCode {
  const { carrier, rootDistanceMm: rootMm, foilLie } = foil
  return {
    code: "place",
    carrier: carrier.kind,
    count: foilsIn(foil, plan),
    widthMm: carrier.widthMm,
    lengthMm: carrier.lengthMm,
    isTight: rootMm <= rootDistanceMm.tight.value,
    lie: foilLie,
  }
}

function productLine(foil: Foil): StepLineCode {
  const startMm = kindOf(foil).productStartMm(foil)
  return {
    code: "product",
    coats: coatCodes(foil),
    startMm,
    isPastCushion: traitsOf(foil).hasCushion,
    fromShare: foil.strand.from,
    toShare: foil.strand.to,
    faces: foil.faces,
  }
}
