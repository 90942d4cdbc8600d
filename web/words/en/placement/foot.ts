import type { WornParting } from "../../../../geometry/parting/wornParting"
import type { SectionKind } from "../../../../geometry/section/section"
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
    firstToLast: "first foil on to last foil off",
    minuteByMinute: "Minute by minute",
    showHairDown: "Show hair down",
    backToDrawing: "Back to the drawing",

    fall: {
      label: "Hair down",
      title: "Shows where it is lightened, not the colour",
      calculating: "Calculating…",
      side: (side: Exclude<Side, "centre">) => t.capital(clientSide[side]),
      range: (low: number, high: number) => `(${t.percent(low)} to ${t.percent(high)})`,
      told: ({ withinCm, heads, kind }: { withinCm: number; heads: number; kind: keyof typeof worn }) =>
        `of the hair visible from the front, within ${t.told.cm(withinCm)} of the face, is lightened. ` +
        `Range: ${t.count(heads, { one: "# simulated head", other: "# simulated heads" })}. ` +
        `Drawn dry and straight, ${worn[kind]}. A sketch, not a colour.`,
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
