import type { CallCode } from "../../../core/chair/callCode"
import type { ToneZoneName } from "../../../core/document/serviceRecord"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"

export const toners = {
  "root-melt": "Root melt",
  mids: "Toner, mid-lengths",
  hairline: "Toner, hairline",
} satisfies Record<ToneZoneName, string>

/** What is due at the chair: as it is shown, second by second, and as it is spoken once. */
export const calls = (t: Tools) => {
  const who = (foils: readonly number[], piece?: Piece) => foilsWords(t, foils, piece)
  return {
    due: "Due",
    toners,
    more: (count: number) => `and ${t.whole(count)} more`,
    freshBowl: "tap when a fresh bowl is mixed",
    /** One tap for all foils of a check. */
    carryOn: (foils: readonly number[], piece?: Piece) =>
      `Carry on, ${foilsWords(t, foils, piece).toLocaleLowerCase(t.locale)}`,
    off: (foil: number) => `Off ${foil}`,
    rootsOn: (foil: number) => `Roots of ${t.whole(foil)} are on`,
    checkOne: "Check one",
    rinse: "Rinsed off",

    shown: {
      "bowl-ahead": ({ bowl, mix, inMs }) => `Bowl ${bowl} of mix ${mix}: use up within ${t.clock(inMs)}`,
      "bowl-past": ({ bowl, mix, byMs }) =>
        `Bowl ${bowl} of mix ${mix}: ${t.clock(byMs)} past its pot life, mix a fresh one`,
      "heat-ahead": ({ inMs }) => `Heat: off in ${t.clock(inMs)}`,
      "heat-past": ({ byMs }) => `Heat: off now, ${t.clock(byMs)} over`,
      "take-off": ({ foils, piece }) => `${who(foils, piece)}: off now, a check said stop`,
      "at-goal": ({ foils, piece }) => `${who(foils, piece)}: off now, at the target level`,
      "planned-ahead": ({ foils, piece, inMs }) => `${who(foils, piece)}: planned off in ${t.clock(inMs)}`,
      "planned-off": ({ foils, piece, byMs }) =>
        byMs < 60_000
          ? `${who(foils, piece)}: planned off now, check`
          : `${who(foils, piece)}: planned off ${t.clock(byMs)} ago, check`,
      "toner-ahead": ({ zone, inMs }) => `${toners[zone]}: rinse in ${t.clock(inMs)}`,
      "toner-off": ({ zone, byMs }) => `${toners[zone]}: check and rinse, ${t.clock(byMs)} over`,
      "toner-limit-ahead": ({ zone, inMs }) => `${toners[zone]}: max time in ${t.clock(inMs)}`,
      "toner-limit": ({ zone, byMs }) => `${toners[zone]}: rinse now, ${t.clock(byMs)} past max time`,
      "limit-ahead": ({ foils, piece, inMs }) => `${who(foils, piece)}: max time in ${t.clock(inMs)}`,
      "limit-past": ({ foils, piece, byMs }) =>
        foils.length === 1
          ? `${who(foils, piece)}: off now, ${t.clock(byMs)} past max time`
          : `${who(foils, piece)}: off now, up to ${t.clock(byMs)} past max time`,
      "roots-ahead": ({ foils, piece, mix, inMs }) =>
        `${who(foils, piece)}: roots in ${t.clock(inMs)}, mix ${mix}`,
      "roots-now": ({ foils, piece, mix, byMs }) =>
        byMs < 60_000
          ? `${who(foils, piece)}: roots on, mix ${mix}`
          : `${who(foils, piece)}: roots on, mix ${mix}, ${t.clock(byMs)} late`,
      "check-ahead": ({ foils, piece, inMs }) => `${who(foils, piece)}: check in ${t.clock(inMs)}`,
      "check-now": ({ foils, piece }) => `${who(foils, piece)}: check now`,
      "check-late": ({ foils, piece, byMs }) => `${who(foils, piece)}: check now, ${t.clock(byMs)} late`,
    } satisfies Sentences<CallCode>,

    spoken: {
      "bowl-ahead": ({ bowl, mix }) => `Bowl ${bowl} of mix ${mix}: use it up soon.`,
      "bowl-past": ({ bowl, mix }) => `Bowl ${bowl} of mix ${mix}: past its pot life, mix a fresh one.`,
      "heat-ahead": "Heat off soon.",
      "heat-past": "Heat off now, then check.",
      "take-off": ({ foils, piece }) => `${who(foils, piece)}: off now.`,
      "at-goal": ({ foils, piece }) => `${who(foils, piece)}: off now.`,
      "planned-ahead": ({ foils, piece }) => `${who(foils, piece)}: planned off soon.`,
      "planned-off": ({ foils, piece }) => `${who(foils, piece)}: planned off now.`,
      "toner-ahead": ({ zone }) => `${toners[zone]}: rinse soon.`,
      "toner-off": ({ zone }) => `${toners[zone]}: check and rinse.`,
      "toner-limit-ahead": ({ zone }) => `${toners[zone]}: max time soon.`,
      "toner-limit": ({ zone }) => `${toners[zone]}: rinse now.`,
      "limit-ahead": ({ foils, piece }) => `${who(foils, piece)}: max time soon.`,
      "limit-past": ({ foils, piece }) => `${who(foils, piece)}: off now, past max time.`,
      "roots-ahead": ({ foils, piece, mix }) => `${who(foils, piece)}: roots soon, mix ${mix}.`,
      "roots-now": ({ foils, piece, mix }) => `${who(foils, piece)}: roots on, mix ${mix}.`,
      "check-ahead": ({ foils, piece }) => `${who(foils, piece)}: check soon.`,
      "check-now": ({ foils, piece }) => `${who(foils, piece)}: check now.`,
      "check-late": ({ foils, piece }) => `${who(foils, piece)}: check now.`,
    } satisfies Sentences<CallCode>,
  }
}

/** Foils by their numbers, three and more that follow each other as a span: "Foils 1 to 5, 8". */
export const foilsWords = (t: Tools, foils: readonly number[], piece?: Piece) =>
  `${t.capital(pieces(t).word(foils.length, piece))} ${t.runs(foils, (from, to) => `${from} to ${to}`)}`
