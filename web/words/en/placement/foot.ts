import type { WornParting } from "../../../../geometry/parting/wornParting"
import type { SectionKind } from "../../../../geometry/section/section"
import type { WornFront } from "../../../../geometry/strands/gather"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { LandmarkCode, Side } from "../../../core/placement/places"
import type { FoilAt } from "../../../core/schedule/foilsAt"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"
import { pieces } from "../common/pieces"

/** What the figures at the foot of the map say. A figure stands before its words. */
export const foot = (t: Tools, { kinds, clientSide, landmark }: CommonWords) => {
  const worn: Record<WornParting["kind"] | "unknown", string> = t.spelled({
    centre: "parted in the middle",
    side: "parted at the side",
    zigzag: "parted in a zigzag",
    none: "combed back",
    unknown: "centre parting assumed (none set)",
  })
  const fronts: Record<WornFront, string> = { cheek: "on the cheek", tucked: "tucked", tied: "tied back" }
  const toned = {
    cool: "toned cool",
    neutral: "toned neutral",
    warm: "toned warm",
    none: "before toner",
  }
  return {
    empty: "Nothing drawn yet. Hairs, hair to coat and grams will show here.",
    totals: "Totals",
    inHand: ({ kind, number }: { kind: SectionKind; number: number | null }) =>
      number === null ? t.capital(kinds[kind]) : `${t.capital(kinds[kind])} ${t.whole(number)}`,
    depth: (mm: number) => `× ${t.mm(mm, 1)}`,
    behindHairline: (at: LandmarkCode) => `behind the hairline, ${landmark(at)}`,
    scalp: "scalp",
    hairs: "hairs",
    hairToCoat: "hair to coat",
    product: (range: string) => `product, ${range}`,
    foils: (foils: number, piece: Piece) => pieces(t).count(foils, piece),
    sections: (sections: number) => t.count(sections, { one: "# section", other: "# sections" }),
    more: "more",
    estimates: "Estimates. Bowls are planned at the upper figure.",
    estimatesLess: (less: string) => `${less}. Bowls are planned at the upper figure.`,
    firstToLast: (piece: Piece): string =>
      ({
        foil: "first foil on to last foil off",
        panel: "first panel on to last panel off",
        both: "first on to last off",
      })[piece],
    minuteByMinute: "Minute by minute",
    showHairDown: "Show hair down",
    backToDrawing: "Back to the drawing",

    fall: {
      label: "Hair down",
      title: "A sketch from pigment figures",
      calculating: "Calculating…",
      side: (side: Exclude<Side, "centre">) => t.capital(clientSide[side]),
      range: (low: number, high: number) => `(${t.percent(low)} to ${t.percent(high)})`,
      told: ({
        withinCm,
        heads,
        kind,
        front,
      }: {
        withinCm: number
        heads: number
        kind: keyof typeof worn
        front: WornFront
      }) =>
        `of the hair visible from the front, within ${t.told.cm(withinCm)} of the face, is lightened. ` +
        `Range: ${t.count(heads, { one: "# simulated head", other: "# simulated heads" })}. ` +
        `Drawn dry and straight, ${worn[kind]}, front ${fronts[front]}, on the day. The strand test shows the colour.`,
      /** What is drawn, and how far its colour may be out. */
      drawn: ({ now, aimed, finish }: { now: number; aimed: number; finish: keyof typeof toned | null }) =>
        `Drawn from level ${t.number(now)} to level ${t.number(aimed)}, ${toned[finish ?? "none"]}; the swatches run from a level darker to a level lighter.`,
      nowAssumed: (level: number) => `Level now not set: drawn as level ${t.number(level)}.`,
      aimedAssumed: (level: number) => `Target level not set: drawn as level ${t.number(level)}.`,
      front: "Front",
      fronts,
      swatches: "Colour, as a range",
      weeks: "Weeks later",
      weeksOn: ({ weeks, lowMm, highMm }: { weeks: number; lowMm: number; highMm: number }) =>
        weeks === 0
          ? "on the day"
          : `${t.count(weeks, { one: "# week", other: "# weeks" })}: roots grown ${t.spread(t.whole(lowMm), t.whole(highMm))} mm (range)`,
      withToner: "With toner",
      showToClient: "Show to the client",
      backToFigures: "Back to the figures",
      clientSentence: "A sketch of where the light falls. The strand test shows the colour.",
    },

    minutes: {
      label: "The map minute by minute",
      slider: "Minute shown on the map",
      listLabel: (atMin: number) => `Foils at minute ${t.whole(atMin)}`,
      foil: ({
        number,
        piece,
        state,
        onMin,
      }: { number: number; piece?: Piece } & Pick<FoilAt, "state" | "onMin">) => {
        const called = t.capital(pieces(t).names([number], piece))
        if (state === "waiting") return `${called}: not on yet`
        return state === "on"
          ? `${called}: on for ${t.minutes(onMin)}`
          : `${called}: off, after ${t.minutes(onMin)}`
      },
      keyLabel: "What the shades say: minutes on, not a result",
      keys: {
        waiting: "not on yet",
        justOn: "just on",
        half: "half its max time",
        all: "all of it",
        off: "off",
      },
    },
  }
}
