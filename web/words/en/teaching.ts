import type { EdgeShape } from "../../../geometry/painted/painting"
import type { LandmarkName } from "../../../geometry/scalp/hairlineLandmarks"
import type { CarrierKind, FoilKind } from "../../../geometry/section/section"
import type { FaultName } from "../../../presets/sheets/teaching"
import type { FoilPlace } from "../../core/schedule/placesOf"
import type { StepLineCode, StepTitleCode } from "../../core/teaching/stepLines"
import type {
  AimCode,
  PieceCode,
  SelfCheckCode,
  TeachingTimeCode,
  ToolCode,
} from "../../core/teaching/teachingPlan"
import type { Sentences } from "../say"
import type { Tools } from "../tools"
import type { CommonWords } from "./common/common"

/** A technique as it is told to a class. */
export const teaching = (t: Tools, common: CommonWords) => ({
  done: {},
  aim: aim(t, common),
  tools: tools(t, common),
  times: times(t),
  checks: checks(t, common),
  faults,
  stepTitles: stepTitles(t, common),
  /** What each line of a step is about. */
  stepLabels: (line: StepLineCode) => (line.code === "take" ? takes(line) : stepLabels[line.code]),
  stepLines: stepLines(t, common),
  divide: "Divide the head",
})

const places: Record<FoilPlace, string> = {
  hairline: "the hairline",
  top: "the top",
  sides: "the sides",
  back: "the back",
}

const aim = (t: Tools, common: CommonWords) => {
  const things: Record<FoilKind, readonly [one: string, several: string]> = t.spelled({
    slice: ["slice", "slices"],
    weave: ["weave", "weaves"],
    backcomb: ["backcombed section", "backcombed sections"],
    painted: ["painted panel", "painted panels"],
  })
  const piece = ({ kind, direction, isOne }: PieceCode) => {
    const thing = things[kind][isOne ? 0 : 1]
    return direction === "parallel to hairline"
      ? `${thing} along the hairline`
      : `${common.directions[direction]} ${thing}`
  }
  return {
    "nothing-drawn": "Nothing is drawn yet.",
    brighten: ({ places: where, foils, pieces }) =>
      t.count(foils, {
        one: `Brighten ${t.and(where.map((each) => places[each]))} with # section: ${t.and(pieces.map(piece))}.`,
        other: `Brighten ${t.and(where.map((each) => places[each]))} with # sections: ${t.and(pieces.map(piece))}.`,
      }),
    leave: ({ names }) => `Leave out: ${t.and(names.map((name) => name || common.kinds["left-out"]))}.`,
  } satisfies Sentences<AimCode>
}

const tools = (t: Tools, common: CommonWords) => {
  const carriers: Record<CarrierKind, (count: number) => string> = {
    foil: (count) => t.count(count, { one: "# foil", other: "# foils" }),
    board: (count) => t.count(count, { one: "# board", other: "# boards" }),
    "open-air": (count) => t.count(count, { one: "# open-air piece", other: "# open-air pieces" }),
    film: (count) => t.count(count, { one: "# piece under film", other: "# pieces under film" }),
  }
  const forms = {
    powder: "powder lightener",
    clay: "clay lightener",
    cream: "cream lightener",
    liquid: "liquid lightener",
  }
  return {
    comb: "Tail comb, water spray, one brush per bowl",
    "section-clips": ({ count }) =>
      `Clips: ${t.whole(count)}, one for each section of the head; not metal near product`,
    clips: ({ low, high }) => `Clips: ${t.spread(t.whole(low), t.whole(high))}; not metal near product`,
    carriers: ({ carrier, count, widthMm, lengthMm }) =>
      carrier === "open-air" || carrier === "film"
        ? carriers[carrier](count)
        : `${carriers[carrier](count)}, ${t.told.size(widthMm, lengthMm)}`,
    mix: ({ mix, form, developerVolume, ratio }) =>
      t.capital(
        `${common.mix(mix)}: ${form ? forms[form] : "product by its directions"}, ${t.number(developerVolume)} vol, ${t.number(ratio.lightener)} : ${t.number(ratio.developer)}`,
      ),
    bowls: ({ count }) =>
      t.count(count, {
        one: "# bowl with a loose cover, not metal; scale",
        other: "# bowls with loose covers, not metal; scale",
      }),
    keeping: "Gloves, eye protection, apron, towel, damp cotton for the hairline",
    minding: ({ piece }) =>
      `Timer; pencil to note when ${{ foil: "each foil", panel: "each panel", both: "each foil and panel" }[piece]} goes on`,
  } satisfies Sentences<ToolCode>
}

const times = (t: Tools) =>
  ({
    "first-check": ({ firstMin, delicateMin, everyMin, piece }) =>
      `First check ${t.minutes(firstMin)} after the ${{ foil: "first foil is", panel: "first panel is", both: "first one is" }[piece]} on, ${t.minutes(delicateMin)} on hairline, fine, porous or lightened hair; then every ${t.minutes(everyMin)} (common practice). The maker’s directions come first.`,
    "max-time": ({ mix, maxMin, isFromSheet, firstCheckMin }) =>
      [
        isFromSheet
          ? `Mix ${mix}: max time ${t.minutes(maxMin)} (from its product sheet).`
          : `Mix ${mix}: max time ${t.minutes(maxMin)} (common practice; no sheet says). Read the directions first.`,
        ...(firstCheckMin ? [`First check after ${t.minutes(firstCheckMin)}.`] : []),
      ].join(" "),
    "each-foil": ({ piece }) =>
      `${{ foil: "Each foil’s", panel: "Each panel’s", both: "Each foil’s and panel’s" }[piece]} time runs from the minute its product first touches the hair: note it, and take each off when it is ready.`,
    "learner-pace": ({ lowMin, highMin, foils }) =>
      t.count(foils, {
        one: `At a learner’s pace, ${t.spread(t.number(lowMin), t.minutes(highMin, 1))} a foil, # foil takes ${t.spread(t.whole(lowMin * foils), t.minutes(highMin * foils))} to place (common practice).`,
        other: `At a learner’s pace, ${t.spread(t.number(lowMin), t.minutes(highMin, 1))} a foil, # foils take ${t.spread(t.whole(lowMin * foils), t.minutes(highMin * foils))} to place (common practice).`,
      }),
  }) satisfies Sentences<TeachingTimeCode>

const mostNumbered = 8

const checks = (t: Tools, common: CommonWords) =>
  ({
    "see-through": ({ slices }) =>
      slices.length > mostNumbered
        ? "I can see light through every fine slice."
        : t.count(slices.length, {
            one: `I can see light through slice ${t.and(slices.map(t.whole))}.`,
            other: `I can see light through slices ${t.and(slices.map(t.whole))}.`,
          }),
    "even-stitches": ({ stitchMm, gapMm, weave }) =>
      `My stitches are even: ${t.told.mm(stitchMm, 1)} taken, ${t.told.mm(gapMm, 1)} left, all along weave ${t.whole(weave)}.`,
    "cushion-dry": "The cushion is dry; product starts past it.",
    "product-start": ({ rootMm }) =>
      `Product starts ${t.told.mm(rootMm, 1)} or more from the scalp; none is on the skin.`,
    "both-faces": "Both sides of each strand are coated, with no dry spots.",
    "left-out-dry": ({ names }) =>
      `Left out and still dry: ${t.and(names.map((name) => name || common.kinds["left-out"]))}.`,
    "sides-match": "Left and right match in the mirror.",
    "minutes-noted": ({ piece }) =>
      `I noted the minute ${{ foil: "each foil", panel: "each panel", both: "each foil and panel" }[piece]} went on, and checked on time.`,
    "foils-sound": "No foil slips or swells, and none feels warm.",
  }) satisfies Sentences<SelfCheckCode>

/** A fault, what it comes from, and what to do about it. */
const faults: Record<FaultName, { fault: string; cause: string; cure: string }> = {
  "bleeding-root": {
    fault: "Bleeding at the root",
    cause: "Too much product, or it starts at the very edge of the foil.",
    cure: "Less on the brush; keep the fold clean; wipe the edge before you close.",
  },
  "band-near-root": {
    fault: "A band near the root",
    cause: "Product stops short, or the foil has slid down.",
    cure: "Place the foil where the plan starts, and press it there while you coat.",
  },
  "dark-spots": {
    fault: "Dark spots inside",
    cause: "Dry patches: one side coated, or the hair not spread flat.",
    cure: "Spread the hair, coat both sides, hold it against the light.",
  },
  "slice-too-deep": {
    fault: "Slice too deep",
    cause: "The comb tail picked up hair from behind the parting.",
    cure: "Part again. A fine slice is thin enough to see light through.",
  },
  "last-foil-dark": {
    fault: "Last foil too dark",
    cause: "It went on long after the first and came off with it.",
    cure: "Take each foil off when it is ready, not all at once.",
  },
  "last-panel-dark": {
    fault: "Last panel too dark",
    cause: "It went on long after the first and came off with it.",
    cure: "Rinse each panel when it is ready, not all at once.",
  },
  "foil-slipping": {
    fault: "Foil slipping",
    cause: "Foil too heavy for the section, or the root was wet with product.",
    cure: "A shorter foil, folded once; start the product a little lower.",
  },
  "cushion-wet": {
    fault: "Cushion wet",
    cause: "Product reached the backcombing.",
    cure: "Wipe it off; start past the cushion, on smooth hair.",
  },
}

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

const stepLabels: Record<Exclude<StepLineCode["code"], "take">, string> = {
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

const stepLines = (t: Tools, common: CommonWords) => {
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

export type TeachingWords = ReturnType<typeof teaching>
