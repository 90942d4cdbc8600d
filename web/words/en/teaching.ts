import type { CarrierKind, FoilKind } from "../../../geometry/section/section"
import type { FaultName } from "../../../presets/sheets/teaching"
import type { FoilPlace } from "../../core/schedule/placesOf"
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
import { stepLabels, stepLines, stepTitles } from "./teachingSteps"

/** A technique as it is told to a class. */
export const teaching = (t: Tools, common: CommonWords) => ({
  done: {},
  aim: aim(t, common),
  tools: tools(t, common),
  times: times(t),
  checks: checks(t, common),
  faults,
  stepTitles: stepTitles(t, common),
  stepLabels,
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

export type TeachingWords = ReturnType<typeof teaching>
