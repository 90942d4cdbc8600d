import type { EdgeShape } from "../../../geometry/painted/painting"
import type { LandmarkName } from "../../../geometry/scalp/hairlineLandmarks"
import type { FoilKind } from "../../../geometry/section/section"
import type { StepLineCode, StepTitleCode } from "../../core/teaching/stepLines"
import type { Sentences } from "../say"
import type { Tools } from "../tools"
import type { CommonWords } from "./common/common"

type KindTitles = Readonly<Record<FoilKind, { one: string; other: string }>>

export const kindTitles: KindTitles = {
  slice: { one: "Slice", other: "Slices" },
  weave: { one: "Weave", other: "Weaves" },
  backcomb: { one: "Backcomb", other: "Backcombs" },
  painted: { one: "Painted panel", other: "Painted panels" },
}

export const stepTitles = (t: Tools, common: CommonWords, titles = t.spelled(kindTitles)) => {
  const named = (numbers: readonly number[], { one, other }: KindTitles[FoilKind]) => {
    const list = t.and(numbers.map(t.whole))
    return t.count(numbers.length, { one: `${one} ${list}`, other: `${other} ${list}` })
  }
  return {
    "leave-out": ({ name, isPair, side }) =>
      `Leave out ${name || "hair"}, ${isPair ? common.bothSides : common.onSide[side]}`,
    foils: ({ kind, numbers, isPair, side }) =>
      `${named(numbers, titles[kind])}, ${isPair ? common.bothSides : common.onSide[side]}`,
  } satisfies Sentences<StepTitleCode>
}

const labels: Record<Exclude<StepLineCode["code"], "take">, string> = {
  part: "Part",
  leave: "Leave",
  hold: "Hold",
  place: "Place",
  product: "Product",
  paint: "Paint",
  "keep-moist": "Air",
  "other-side": "Then",
}
const takes = ({ stitching, pushed }: Extract<StepLineCode, { code: "take" }>) =>
  pushed ? "Backcomb" : stitching ? "Weave" : "Slice"

/** What a line of a step is about. */
export const stepLabels = (line: StepLineCode) => (line.code === "take" ? takes(line) : labels[line.code])

export const stepLines = (t: Tools, common: CommonWords) => {
  const toHalf = (mm: number) => Math.round(mm * 2) / 2
  const half = (mm: number) => t.told.mm(toHalf(mm), 1)
  const spot = ({ landmark, behindMm }: { landmark: LandmarkName; behindMm: number }) =>
    `${t.told.mm(Math.max(0, behindMm))} behind the ${common.landmarks[landmark]}`
  const run = ({ run: { from, to, isEven, isAcross } }: Extract<StepLineCode, { code: "part" }>) => {
    if (!isEven) return `From ${spot(from)}${isAcross ? ", over the middle," : ""} to ${spot(to)}`
    const behind = `${t.told.mm(from.behindMm)} behind the hairline`
    return from.landmark === to.landmark && !isAcross
      ? `${behind}, at the ${common.landmarks[from.landmark]}`
      : `${behind}, ${common.landmarks[from.landmark]} to ${common.landmarks[to.landmark]}`
  }
  const depth = ({ start, end }: { start: number; end: number }) =>
    start === end ? half(start) : `${half(start)} at the start, ${half(end)} at the end,`
  const rows = (count: number, gapMm: number) =>
    gapMm < 0.5
      ? t.count(count, { one: "# row.", other: "# rows, one behind the other, no gap between." })
      : t.count(count, {
          one: "# row.",
          other: `# rows, one behind the other, leaving ${half(gapMm)} between.`,
        })
  const lies = t.spelled({
    down: "it hangs down",
    up: "it is laid up",
    "toward-face": "it lies towards the face",
    "away-from-face": "it lies away from the face",
  })
  const sheets: Record<"foil" | "board", (count: number) => string> = {
    foil: (count) => t.count(count, { one: "One foil", other: "# foils side by side" }),
    board: (count) => t.count(count, { one: "One board", other: "# boards side by side" }),
  }
  const edges: Record<Exclude<EdgeShape, "straight">, string> = {
    v: "an edge in a V",
    w: "an edge in a W",
    u: "an edge in a U",
    freehand: "a freehand edge",
  }
  return {
    part: (line) =>
      [
        `${run(line)}; ${common.direction(line.direction)}, ${t.told.mm(line.partingMm)} long.`,
        line.taken === "front"
          ? `Take ${depth(line.depthMm)} in front of it.`
          : `Take ${depth(line.depthMm)} behind it.`,
        ...(line.gapMm === null ? [] : [rows(line.rows, line.gapMm)]),
      ].join(" "),
    leave: "Clip it out of the way; no product.",
    hold: ({ elevationDeg, overDirectionDeg }) =>
      overDirectionDeg === 0
        ? `${t.number(elevationDeg)}° from the head, on base.`
        : `${t.number(elevationDeg)}° from the head, ${t.number(overDirectionDeg)}° off base.`,
    take: ({ stitching, isSeenThrough, pushed }) =>
      [
        stitching
          ? `Stitches of ${half(stitching.stitchMm)}, ${half(stitching.gapMm)} left between; the tail dips ${half(stitching.dipMm)}.`
          : isSeenThrough
            ? "All of it, thin enough to see light through."
            : "All of it, spread flat and even.",
        ...(pushed
          ? [
              `Push ${t.percent(pushed.share)} back in ${t.spread(t.whole(pushed.leastStrokes), t.whole(pushed.mostStrokes))} strokes: a cushion of ${half(pushed.cushionMm)}.`,
            ]
          : []),
      ].join(" "),
    place: ({ carrier, count, widthMm, lengthMm, isTight, lie }) =>
      carrier === "open-air"
        ? "In the open air; keep it off the hair beneath."
        : carrier === "film"
          ? "Under film; keep it off the hair beneath."
          : `${sheets[carrier](count)}, ${t.told.size(widthMm, lengthMm)}, under it, ${isTight ? "tight at" : "close to"} the root; ${lies[lie]}.`,
    product: ({ coats, startMm, isPastCushion, fromShare, toShare, faces }) => {
      const from =
        fromShare > 0
          ? `${t.percent(fromShare)} of the length`
          : isPastCushion
            ? `past the cushion (${t.mm(toHalf(startMm), 1)} off the scalp)`
            : `${half(startMm)} off the scalp`
      const to = toShare === 1 ? "the ends" : `${t.percent(toShare)} of the length`
      return `${t.capital(common.coats(coats))}, from ${from} to ${to}, ${faces === 2 ? "both sides of the strand" : "one side of the strand"}.`
    },
    paint: ({ mix, edge, highShare, lowShare, toShare, featherMm, faces }) =>
      [
        `Lay the panel flat on your hand or a board. Mix ${mix}, ${faces === 2 ? "both sides" : "the upper side only"}:`,
        edge === "straight"
          ? `a straight edge at ${t.percent(highShare)} of the length,`
          : `${edges[edge]} from ${t.percent(highShare)} of the length down to ${t.percent(lowShare)},`,
        toShare === 1 ? "painted to the ends." : `painted to ${t.percent(toShare)} of the length.`,
        `Feather the first ${half(featherMm)}: thin at the edge, then fuller; below that a full coat.`,
      ].join(" "),
    "keep-moist": ({ isUnderFilm }): string =>
      isUnderFilm
        ? "Under film as the maker directs; keep it off the hair beneath."
        : "In the open air; keep it off the hair beneath. It works only while moist: cover with film or re-mist as the maker directs.",
    "other-side": ({ isEachRow }): string =>
      isEachRow
        ? "After each row the same row on the other side, from the same landmark."
        : "The other side, from the same landmark.",
  } satisfies Sentences<StepLineCode>
}
