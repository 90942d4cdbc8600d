import type { Range } from "../../../../geometry/hair/tradeFigures"
import type { Direction } from "../../../../geometry/parting/direction"
import type { Plan } from "../../../core/document/schema"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"
import type { Names } from "./names"

/** The placement and formula map. */
export const map = (t: Tools, common: Names) => ({
  about: "Placement and formula map",
  aboutMirror: "Placement and formula map, front as seen in the mirror",
  /** The usual parting and the crown swirl, where either is known. */
  worn: worn(t),

  /** In the head, as large as the numbers of the foils. */
  alerts: { stop: "NOT CLEARED: DO NOT MIX", notAsked: "NOT CLEARED: health not asked" },

  /** To be filled in by hand; the rule to write on is drawn. */
  tests: { strand: "Strand test done:", patch: "Patch test read clear on:" },

  bowls,
  toner: { title: "Toner, after rinsing" },
  working: working(t, common),
  painted: {
    title: "Painted panels, scale 1 : 10",
    of: ({ widthMm, lengthMm, share }: { widthMm: number; lengthMm: number; share: number }) =>
      `${t.mm(widthMm)} × ${t.mm(lengthMm)}, ${t.percent(share)} painted`,
    key: "From the edge: soft, middle, full.",
  },
  ruler: ruler(t, common),
  table: table(t, common),
  clock: clock(t),
})

const bowls = {
  title: "Bowls, at the upper figure",
  doneTitle: "Bowls, as mixed",
}

const working = (t: Tools, common: Names) => ({
  title: "Sections of the head, in order",
  row: ({
    name,
    foils,
    productG,
    placeMin,
  }: {
    name: string
    foils: readonly number[]
    productG: Range
    placeMin: Range | null
  }) =>
    [
      `${name}: ${common.foils(foils)}`,
      t.gramsRange(productG),
      ...(placeMin ? [`${t.spread(t.whole(placeMin.low), t.whole(placeMin.high))} min`] : []),
    ].join("; "),
  noFoils: (names: readonly string[]) => `${names.join(", ")}: no foils`,
  crossing: (names: readonly string[]) => `In two sections: ${t.and(names)}`,
})

const ruler = (t: Tools, common: Names) => ({
  title: "Depths, true size",
  check: ["50 mm long; if it is not,", "print at full size"],
  depth: (mm: number) => t.mm(mm, 1),
  foils: common.foils,
  foilCount: common.foilCount,
  /** How far off the scalp, drawn. */
  starts: "Product start, true size",
  /** Where lightened hair may begin, off the scalp. */
  notPast: ({ low, high }: { low: number; high: number }) =>
    `lightened from ${t.spread(t.whole(low), t.mm(high))}: no product past the line`,
  stitches: "Stitch/gap, mm, true size",
  stitch: ({ stitchMm, gapMm, dipMm }: { stitchMm: number; gapMm: number; dipMm: number }) =>
    `${half(t, stitchMm)}/${half(t, gapMm)}, dip ${half(t, dipMm)}`,
  scale: "50 mm on the head, in every view",
})

/** Halves are kept, since a slice is one to three millimetres deep. */
const half = (t: Tools, mm: number) => t.number(Math.round(mm * 2) / 2, 1)

const table = (t: Tools, common: Names) => ({
  /** What stands over each column, in one line or two. */
  heads: {
    order: ["Order"],
    number: ["No."],
    side: ["Side"],
    kind: ["Kind"],
    foils: ["Foils"],
    lengthMm: ["Length", "mm"],
    depthMm: ["Depth", "mm"],
    direction: ["Parting"],
    start: ["Start", "mm"],
    hairG: ["Hair", "g"],
    lowG: ["low"],
    midG: ["mid"],
    highG: ["high"],
    mix: ["Mix"],
    on: ["On"],
    off: ["Off"],
  } satisfies Record<string, readonly string[]>,
  product: "Product, g",
  sides: { left: "left", right: "right", centre: "centre" },
  kinds: { slice: "Slice", weave: "Weave", backcomb: "Backcomb", painted: "Painted" },
  half: (mm: number) => half(t, mm),
  /** The direction in the fewest words: what follows the hairline is parallel. */
  direction: (direction: Direction) =>
    direction.name === "parallel to hairline" ? "parallel" : common.direction(direction),
  /** Where product starts, mm off the scalp, and to where along the strand. */
  start: (startMm: number, { from, to }: { from: number; to: number }) => {
    const start = from > 0 ? t.percent(from) : half(t, startMm)
    return to < 1 ? `${start} to ${t.percent(to)}` : start
  },
  carriers: { board: "board", "open-air": "open", film: "film" },
  leftOut: (name: string) => (name ? `Left out: ${name}` : "Left out"),
  total: ({ foils, piece, areaCm2, hairs }: { foils: number; piece: Piece; areaCm2: number; hairs: Range }) =>
    `${pieces(t).count(foils, piece)}, ${t.area(areaCm2)} of scalp, ${t.spread(t.hairs(hairs.low), t.hairs(hairs.high))} hairs`,
  takenTwice: (less: string) => `${less}; cross-hatched on the map.`,
  arrows:
    "Product goes from its start (mm off the scalp) to the ends unless the row says else. Arrows: on the map how a foil lies, here how the parting drops as that side is seen.",
})

const clock = (t: Tools) => ({
  title: "Clock, minutes from the first parting",
  heads: { number: "No.", on: "On", ready: "Ready", off: "Off by" },
  key: "Bar: time on, hatched as its mix. White: may be ready. Heavy stroke: maximum time. Dotted: a check. Triangle: mix that bowl. Planned, not promised: check, and take off what is ready.",
  rest: ({
    who,
    fromMin,
    toMin,
  }: {
    who: "all" | "colourist" | "assistant"
    fromMin: number
    toMin: number
  }) => `${t.spelled(resting)[who]} from minute ${t.whole(fromMin)} to ${t.whole(toMin)}.`,
  heat: ({ fromMin, toMin }: { fromMin: number; toMin: number }) =>
    `Heat from minute ${t.whole(fromMin)} to ${t.whole(toMin)}: then off, check, cool.`,
  readyOpen: (low: number) => `${t.whole(low)}–?`,
})

const resting = { all: "Break", colourist: "Colourist on break", assistant: "Assistant on break" }

const worn =
  (t: Tools) =>
  ({ wornParting, whorl }: Pick<Plan["head"], "wornParting" | "whorl">) =>
    [
      ...(wornParting
        ? [wornParting.kind === "side" ? sides[wornParting.side] : t.spelled(partings)[wornParting.kind]]
        : []),
      ...(whorl ? [t.spelled(whorls)[whorl.turns]] : []),
    ].join(", ")

const partings = { centre: "parted in the middle", zigzag: "zigzag parting", none: "no usual parting" }
const sides = { left: "parted left", right: "parted right" }
const whorls = {
  clockwise: "crown swirl clockwise",
  anticlockwise: "crown swirl anticlockwise",
  none: "no crown swirl",
}
