import { type StitchWord, stitches, stitchWords } from "../../../presets/placement/foils"
import { usualGapMm } from "../../../presets/placement/stacking"
import { measure } from "../../../presets/techniques/build"
import { ownDepthSpanMm, ownMostRows } from "../../../presets/techniques/ownSpans"
import type {
  Technique,
  TechniqueParameters,
  TechniqueSection,
  VariedTechnique,
} from "../../../presets/techniques/technique"
import { counts } from "../fields/limits"
import { isFoilKind, kindRecords } from "../kinds/kindRecords"
import { deepest, gapsOf, type Lane, techniqueRowsOf } from "./techniqueRows"
import { varyTechnique } from "./varyTechnique"

/** A technique of one's own as one that may be varied, by the measures that can be told from how it was saved. */
export function techniqueParameters(technique: Technique): VariedTechnique {
  const parameters = ownParameters(technique.sections)
  return {
    parameters,
    shape: (values) => ({ sections: varyTechnique(technique.sections, parameters, values) }),
  }
}

function ownParameters(sections: readonly TechniqueSection[]): TechniqueParameters {
  const lanes = techniqueRowsOf(sections)
  const depthMm = depthOf(sections)
  const gapMm = gapOf(lanes)
  const count = gapMm && countOf(lanes, sections.length)
  const stitch = stitchOf(sections)
  return {
    ...(depthMm && { depthMm }),
    ...(gapMm && { gapMm }),
    ...(count && { count }),
    ...(stitch && { stitch }),
  }
}

/** The depth that most foils have. */
function depthOf(sections: readonly TechniqueSection[]) {
  const even = sections.filter(({ kind, depthMm }) => isFoilKind(kind) && depthMm.start === depthMm.end)
  const common = even.map((each) => even.filter((other) => deepest(other) === deepest(each)))
  const most = common.reduce((best, alike) => (alike.length > best.length ? alike : best), [])
  const [first] = most
  if (!first) return null
  const isOneKind = most.every(({ kind }) => kind === first.kind)
  const label = isOneKind ? kindRecords[first.kind].depthLabel : "depth"
  return measure(label, deepest(first), spanWith(deepest(first), ownDepthSpanMm))
}

/** The gap that all have that lie behind another, when they are parallel. */
function gapOf(lanes: readonly Lane[]) {
  const gaps = lanes.flatMap(gapsOf)
  const known = gaps.filter((gap) => gap !== null)
  const [most, least] = [Math.max(...known), Math.min(...known)]
  if (gaps.length === 0 || known.length < gaps.length || most - least > evenMm || least < -evenMm) return null
  const gapMm = Math.max(0, Math.round(most + least) / 2)
  return measure("gap", gapMm, spanWith(gapMm, usualGapMm.range))
}

/** Gaps that differ by no more are the same gap, mm. */
const evenMm = 1

/** How many lie behind one another, when all are alike and each lane has as many. */
function countOf(lanes: readonly Lane[], all: number) {
  const [{ length }] = lanes
  const isRegular = lanes.every(
    (lane) => lane.length === length && lane.every((each) => isAlike(each, lane[0])),
  )
  const roomFor = Math.floor(counts.techniqueSections.high / (all / length))
  return isRegular && length > 1
    ? measure("rows", length, [1, Math.max(length, Math.min(ownMostRows, roomFor))], 1)
    : null
}

const isAlike = (one: TechniqueSection, other: TechniqueSection) =>
  one.kind === other.kind && one.taken === other.taken && deepest(one) === deepest(other)

/** The word for the stitch that all woven sections have. */
function stitchOf(sections: readonly TechniqueSection[]): StitchWord | undefined {
  const woven = sections.flatMap(({ stitching }) => stitching ?? [])
  return woven.length === 0
    ? undefined
    : stitchWords.find((word) =>
        woven.every(
          ({ stitchMm, gapMm }) =>
            stitchMm === stitches[word].stitchMm.value && gapMm === stitches[word].gapMm.value,
        ),
      )
}

const spanWith = (value: number, [low, high]: readonly [number, number]) =>
  [Math.min(low, value), Math.max(high, value)] as const
