import type { CallCode } from "../../../core/chair/callCode"
import type { ToneZoneName } from "../../../core/document/serviceRecord"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"

export const toners = {
  "root-melt": "Root melt",
  mids: "Toner, mid-lengths",
  hairline: "Toner, hairline",
} satisfies Record<ToneZoneName, string>

/** What is due at the chair: as it is shown, second by second, and as it is spoken once. */
export const calls = (t: Tools) => {
  const who = (foils: readonly number[]) => foilsWords(t, foils)
  return {
    due: "Due",
    toners,
    more: (count: number) => `and ${t.whole(count)} more`,
    freshBowl: "tap when a fresh bowl is mixed",
    /** One tap for all foils of a check. */
    carryOn: (foils: readonly number[]) => `Carry on, ${foilsWords(t, foils).toLocaleLowerCase(t.locale)}`,
    off: (foil: number) => `Off ${foil}`,
    checkOne: "Check one",
    rinse: "Rinsed off",

    shown: {
      "bowl-ahead": ({ bowl, mix, inMs }) => `Bowl ${bowl} of mix ${mix}: use up within ${t.clock(inMs)}`,
      "bowl-past": ({ bowl, mix, byMs }) =>
        `Bowl ${bowl} of mix ${mix}: ${t.clock(byMs)} past its pot life, mix a fresh one`,
      "heat-ahead": ({ inMs }) => `Heat: off in ${t.clock(inMs)}`,
      "heat-past": ({ byMs }) => `Heat: off now, ${t.clock(byMs)} over`,
      "take-off": ({ foils }) => `${who(foils)}: off now, a check said stop`,
      "at-goal": ({ foils }) => `${who(foils)}: off now, at the target level`,
      "planned-ahead": ({ foils, inMs }) => `${who(foils)}: planned off in ${t.clock(inMs)}`,
      "planned-off": ({ foils, byMs }) =>
        byMs < 60_000
          ? `${who(foils)}: planned off now, check`
          : `${who(foils)}: planned off ${t.clock(byMs)} ago, check`,
      "toner-ahead": ({ zone, inMs }) => `${toners[zone]}: rinse in ${t.clock(inMs)}`,
      "toner-off": ({ zone, byMs }) => `${toners[zone]}: check and rinse, ${t.clock(byMs)} over`,
      "toner-limit-ahead": ({ zone, inMs }) => `${toners[zone]}: max time in ${t.clock(inMs)}`,
      "toner-limit": ({ zone, byMs }) => `${toners[zone]}: rinse now, ${t.clock(byMs)} past max time`,
      "limit-ahead": ({ foils, inMs }) => `${who(foils)}: max time in ${t.clock(inMs)}`,
      "limit-past": ({ foils, byMs }) =>
        foils.length === 1
          ? `${who(foils)}: off now, ${t.clock(byMs)} past max time`
          : `${who(foils)}: off now, up to ${t.clock(byMs)} past max time`,
      "check-ahead": ({ foils, inMs }) => `${who(foils)}: check in ${t.clock(inMs)}`,
      "check-now": ({ foils }) => `${who(foils)}: check now`,
      "check-late": ({ foils, byMs }) => `${who(foils)}: check now, ${t.clock(byMs)} late`,
    } satisfies Sentences<CallCode>,

    spoken: {
      "bowl-ahead": ({ bowl, mix }) => `Bowl ${bowl} of mix ${mix}: use it up soon.`,
      "bowl-past": ({ bowl, mix }) => `Bowl ${bowl} of mix ${mix}: past its pot life, mix a fresh one.`,
      "heat-ahead": "Heat off soon.",
      "heat-past": "Heat off now, then check.",
      "take-off": ({ foils }) => `${who(foils)}: off now.`,
      "at-goal": ({ foils }) => `${who(foils)}: off now.`,
      "planned-ahead": ({ foils }) => `${who(foils)}: planned off soon.`,
      "planned-off": ({ foils }) => `${who(foils)}: planned off now.`,
      "toner-ahead": ({ zone }) => `${toners[zone]}: rinse soon.`,
      "toner-off": ({ zone }) => `${toners[zone]}: check and rinse.`,
      "toner-limit-ahead": ({ zone }) => `${toners[zone]}: max time soon.`,
      "toner-limit": ({ zone }) => `${toners[zone]}: rinse now.`,
      "limit-ahead": ({ foils }) => `${who(foils)}: max time soon.`,
      "limit-past": ({ foils }) => `${who(foils)}: off now, past max time.`,
      "check-ahead": ({ foils }) => `${who(foils)}: check soon.`,
      "check-now": ({ foils }) => `${who(foils)}: check now.`,
      "check-late": ({ foils }) => `${who(foils)}: check now.`,
    } satisfies Sentences<CallCode>,
  }
}

/** Foils by their numbers, three and more that follow each other as a span: "Foils 1 to 5, 8". */
export const foilsWords = (t: Tools, foils: readonly number[]) =>
  `${t.count(foils.length, { one: "Foil", other: "Foils" })} ${t.runs(foils, (from, to) => `${from} to ${to}`)}`
