import type { Head } from "../../../geometry/scalp/head"
import { nearestLandmark } from "../../../geometry/scalp/nearestLandmark"
import type { Foil, FoilKind, Section } from "../../../geometry/section/section"
import { isFoil } from "../../../geometry/section/section"
import type { SurfacePoint } from "../../../geometry/surface/frames"
import { rootDistanceMm } from "../../../presets/placement/foils"
import { seeThroughMm, strokes } from "../../../presets/sheets/teaching"
import type { Plan } from "../document/schema"
import { figuresOf, headOf } from "../figures/measured"
import { joinWords } from "../text/joinWords"
import { numberText } from "../text/numberText"
import { directionText, kindWords, lieWords, sideOf } from "../text/words"
import type { TeachingStep } from "./teachingSteps"

/** One thing the hands do at a step. */
export type StepLine = { label: string; text: string }

/** What a step is called: the kind, the numbers on the map, the side. */
export function stepTitle({ rows, sections, isPair }: TeachingStep): string {
  const [first] = rows
  if (!isFoil(first)) return `Leave out: ${first.name || "hair"}${isPair ? ", both sides" : ""}`
  const numbers = sections.filter(isFoil).map(({ mapNumber }) => mapNumber)
  const where = isPair ? "both sides" : sideWords(first)
  return `${kindWords[first.kind]} ${joinWords(numbers.map(String))}, ${where}`
}

const sideWords = (section: Section) => {
  const side = sideOf(section)
  return side === "centre" ? "in the middle" : `client’s ${side}`
}

/** Part, hold, take up, place and coat, in the order the hands go. */
export function stepLines(step: TeachingStep, plan: Plan): StepLine[] {
  const [first] = step.rows
  const part = { label: "Part", text: partWords(step, plan) }
  if (!isFoil(first)) return [part, { label: "Leave", text: "Clip it away; it stays as it is." }]
  return [
    part,
    { label: "Hold", text: holdWords(first) },
    { label: takenUp[first.kind], text: takeWords(first) },
    { label: "Place", text: placeWords(first, plan) },
    { label: "Product", text: productWords(first) },
    ...(step.isPair ? [{ label: "Then", text: "The other side, from the same landmark." }] : []),
  ]
}

const takenUp: Record<FoilKind, string> = { slice: "Slice", weave: "Weave", backcomb: "Weave" }

function partWords({ rows, gapMm }: TeachingStep, plan: Plan): string {
  const [first] = rows
  const head = headOf(plan)
  const { partingMm } = figuresOf(first, plan)
  const side = first.taken === "front" ? "in front of it" : "behind it"
  const again =
    gapMm === null
      ? ""
      : ` ${rows.length} times, one behind the other, ${gapMm < 0.5 ? "no gap" : `${mm(gapMm)} left`} between.`
  return `${placeWordsOf(first, head)}; ${directionText(first, head)}, ${numberText(partingMm, 0)} mm long. Take ${depthWords(first)} ${side}.${again}`
}

/** Where a parting runs, told by the hairline. */
function placeWordsOf({ parting }: Section, head: Head): string {
  const [from, middle, to] = [parting[0], parting[parting.length >> 1], parting[parting.length - 1]].map(
    (at) => spotOf(at, head),
  )
  const isEven = Math.abs(from.behindMm - to.behindMm) <= 2 && Math.abs(from.behindMm - middle.behindMm) <= 2
  if (isEven)
    return from.landmark === to.landmark
      ? `${behind(middle.behindMm)} near the ${from.landmark}`
      : `${behind(middle.behindMm)}, ${from.landmark} to ${to.landmark}`
  const start = `From ${numberText(Math.abs(from.behindMm), 0)} mm behind the ${from.landmark}`
  return `${start} to ${numberText(Math.abs(to.behindMm), 0)} mm behind the ${to.landmark}`
}

function spotOf(at: SurfacePoint, { hairline }: Head) {
  const { alongMm, behindMm } = hairline.coordinates(at)
  return { behindMm, landmark: nearestLandmark(hairline, alongMm).name }
}

const behind = (behindMm: number) => `${numberText(Math.max(0, behindMm), 0)} mm behind the hairline`

/** One depth, or both where the band is a wedge. */
export function depthWords({ depthMm: { start, end } }: Section): string {
  return start === end ? mm(start) : `${mm(start)} running to ${mm(end)}`
}

const mm = (value: number) => `${numberText(Math.round(value * 2) / 2)} mm`

function holdWords({ elevationDeg, overDirectionDeg }: Foil): string {
  const over = overDirectionDeg === 0 ? "no over-direction" : `${numberText(overDirectionDeg)}° off its base`
  return `${numberText(elevationDeg)}° from the head, ${over}.`
}

function takeWords(foil: Foil): string {
  if (foil.kind === "slice") return allOfIt(foil)
  const stitching = `Stitches of ${mm(foil.stitchMm)}, ${mm(foil.gapMm)} left between, tail dips ${mm(foil.dipMm)}.`
  if (foil.kind === "weave") return stitching
  const taken = foil.base === "weave" ? stitching : allOfIt(foil)
  const [least, most] = strokes.range
  return `${taken} Push ${numberText(100 * foil.pushedShare, 0)} % back in ${least} to ${most} strokes: a cushion of ${mm(foil.cushionMm)}.`
}

const allOfIt = ({ depthMm: { start, end } }: Foil) =>
  Math.max(start, end) <= seeThroughMm
    ? "All of it, thin enough to see light through."
    : "All of it, spread flat and even."

function placeWords(foil: Foil, plan: Plan): string {
  const { kind, widthMm, lengthMm } = foil.carrier
  const size = `${numberText(widthMm, 0)} × ${numberText(lengthMm, 0)} mm`
  if (kind === "open-air") return "In the open air; keep it off the hair beneath."
  const count = Math.max(1, figuresOf(foil, plan).foils)
  const sheet = `${count > 1 ? `${count} ${kind}s side by side` : `One ${kind}`}, ${size},`
  return `${sheet} under it and ${foil.rootDistanceMm <= rootDistanceMm.tight.value ? "tight at" : "close to"} the root; ${lieWords[foil.foilLie]}.`
}

function productWords(foil: Foil): string {
  const { mix, faces, strand, rootDistanceMm: rootMm } = foil
  const start =
    foil.kind === "backcomb"
      ? "past the cushion"
      : strand.from === 0
        ? `${mm(rootMm)} off the scalp`
        : percent(strand.from)
  const end = strand.to === 1 ? "the ends" : `${percent(strand.to)} of the length`
  return `Mix ${mix}, from ${start} to ${end}, ${faces === 2 ? "both faces" : "one face"}.`
}

const percent = (share: number) => `${numberText(100 * share, 0)} %`
