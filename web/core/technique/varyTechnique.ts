import { type StitchWord, stitches } from "../../../presets/placement/foils"
import type {
  TechniqueParameters,
  TechniqueSection,
  TechniqueValues,
} from "../../../presets/techniques/technique"
import { limits } from "../fields/limits"
import { isFoilKind, kindRecords } from "../kinds/kindRecords"
import { deepest, type Lane, leaderOf, pushedBack, spotsOf, techniqueRowsOf } from "./techniqueRows"

/** By how much each measure was changed from what it is in the technique. */
type Change = { depthMm: number; deeperMm: number; widerMm: number; more: number; stitch: StitchWord | null }

/** The sections of a technique with other measures; at its own measures they are what they were. */
export function varyTechnique(
  sections: readonly TechniqueSection[],
  parameters: TechniqueParameters,
  values: TechniqueValues,
): readonly TechniqueSection[] {
  const change = changeOf(parameters, values)
  const lanes = techniqueRowsOf(sections)
  const backMm = new Map(
    lanes.flatMap((lane) => lane.map((each, i) => [each, shiftMm(lane, i, change)] as const)),
  )
  const left = new Set(lanes.flatMap((lane) => (change.more < 0 ? lane.slice(change.more) : [])))
  const kept = sections.flatMap((section) => {
    const leader = leaderOf(section, sections)
    return left.has(leader) ? [] : [changed(section, backMm.get(leader) ?? 0, change)]
  })
  const rows = lanes.flatMap((lane) => added(lane, sections, backMm, change, values))
  return onHead([...kept, ...paired(rows, sections)])
}

const changeOf = (
  { depthMm, gapMm, count, stitch }: TechniqueParameters,
  values: TechniqueValues,
): Change => ({
  depthMm: depthMm?.value ?? 0,
  deeperMm: depthMm ? values.depthMm - depthMm.value : 0,
  widerMm: gapMm ? values.gapMm - gapMm.value : 0,
  more: count ? values.count - count.value : 0,
  stitch: stitch && values.stitch !== stitch ? values.stitch : null,
})

/** Those that a technique can hold: farther behind the hairline there is no head, for a section or its pair. */
function onHead(sections: readonly TechniqueSection[]): readonly TechniqueSection[] {
  const isOff = ({ parting }: TechniqueSection) =>
    spotsOf(parting).some(({ behindMm }) => behindMm > limits.behindMm.high)
  return sections.filter((section) => ![section, ...pairOf(section, sections)].some(isOff))
}

const pairOf = ({ pair }: TechniqueSection, sections: readonly TechniqueSection[]) =>
  pair === undefined ? [] : sections.filter((each) => each.pair === pair)

/** Rows that were added, each pair under a number of its own. */
function paired(rows: readonly (readonly TechniqueSection[])[], sections: readonly TechniqueSection[]) {
  const highest = Math.max(...sections.map(({ pair }) => pair ?? 0))
  return rows.flatMap((row, i) =>
    row.map((section) => (section.pair === undefined ? section : { ...section, pair: highest + i + 1 })),
  )
}

/** How far a section goes back because those before it, and what lies between, became deeper. */
function shiftMm(lane: Lane, index: number, change: Change): number {
  const deepened = lane
    .slice(0, index + 1)
    .filter((each, i) => isDeepened(each, change) && (i < index || each.taken === "front"))
  return deepened.length * change.deeperMm + index * change.widerMm
}

const isDeepened = ({ kind, depthMm: { start, end } }: TechniqueSection, { depthMm }: Change) =>
  isFoilKind(kind) && start === depthMm && end === depthMm

function changed(section: TechniqueSection, backMm: number, change: Change): TechniqueSection {
  const deeper = change.deeperMm !== 0 && isDeepened(section, change)
  if (backMm === 0 && !deeper && change.stitch === null) return section
  const mm = deepest(section) + (deeper ? change.deeperMm : 0)
  const { stitching } = section
  return {
    ...section,
    parting: pushedBack(section.parting, backMm),
    ...(deeper ? { depthMm: { start: mm, end: mm } } : {}),
    ...(stitching ? { stitching: stitchedAs(stitching, section, mm, change.stitch) } : {}),
  }
}

/** What was woven out of the whole depth and then backcombed still is; a weave dips as its stitch does. */
function stitchedAs(
  stitching: NonNullable<TechniqueSection["stitching"]>,
  section: TechniqueSection,
  depthMm: number,
  word: StitchWord | null,
) {
  const { traits } = kindRecords[section.kind]
  const isWhole = traits?.hasCushion && stitching.dipMm === deepest(section)
  const dipped = isWhole ? { ...stitching, dipMm: depthMm } : stitching
  if (word === null) return dipped
  const { stitchMm, gapMm, dipMm } = stitches[word]
  return {
    stitchMm: stitchMm.value,
    gapMm: gapMm.value,
    dipMm: traits?.isWoven ? dipMm.value : dipped.dipMm,
  }
}

/** More rows like the last of a lane, each so far behind the one before; of a pair, pairs. */
function added(
  lane: Lane,
  sections: readonly TechniqueSection[],
  backMm: ReadonlyMap<TechniqueSection, number>,
  change: Change,
  { gapMm }: TechniqueValues,
): TechniqueSection[][] {
  const last = lane[lane.length - 1]
  const likeLast = sections.filter((section) => leaderOf(section, sections) === last)
  const stepMm = gapMm + deepest(changed(last, 0, change))
  return Array.from({ length: Math.max(0, change.more) }, (_, i) =>
    likeLast.map((section) => changed(section, (backMm.get(last) ?? 0) + (i + 1) * stepMm, change)),
  )
}
