import type { FixCode } from "../../../core/fixes/fix"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { LiftsFirst } from "../../../core/lift/liftsFirst"
import type { GoalRefusal } from "../../../core/lift/scheduleReady"
import type { ConflictCode } from "../../../core/schedule/conflicts"
import type { HeatRefusal } from "../../../core/schedule/heatRefusal"
import type { TimingAssumption, TimingProblem } from "../../../core/schedule/timedPlan"
import type { OfPieces } from "../../pieceWords"
import { type Sentences, say } from "../../say"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"

/** What the clock finds: why there is none, what was assumed, what clashes, and what mends it. */
export const clashes = (t: Tools) => {
  const min = (minutes: number) => t.minutes(minutes, 1)
  const numbers = (foils: readonly number[]) => t.runs(foils, (from, to) => `${from} to ${to}`)
  const { word, names } = pieces(t)
  const foils = (list: readonly number[], piece?: Piece) => `${word(list.length, piece)} ${numbers(list)}`
  const one = (foil: number, piece?: Piece) => t.capital(names([foil], piece))
  const others = (count: number) =>
    count === 0 ? "" : t.count(count, { one: " (and # more)", other: " (and # more)" })

  const goals = {
    "from-off-scale": ({ level, darkest, lightest }) =>
      `The level now is ${t.number(level)}: the scale runs from ${darkest} to ${lightest}.`,
    "to-off-scale": ({ level, darkest, lightest }) =>
      `The target level is ${t.number(level)}: the scale runs from ${darkest} to ${lightest}.`,
    "not-lighter": "The target level must be lighter than the level now.",
  } satisfies Sentences<GoalRefusal>

  const orOverride = "Switch it off, or override that stop in writing."
  const heat = t.spelled({
    "too-warm": ({ ceilingC, warmthC }) =>
      `No heat: lift is not worked out above ${t.told.celsius(ceilingC)}, and ${t.told.celsius(warmthC)} was entered. Set it cooler.`,
    "not-on-sheet": "No heat: the product sheet does not allow it. Switch the heat off.",
    "strong-mix": ({ mix, volume }) =>
      `No heat: mix ${mix} is made with ${t.number(volume)} vol. ${orOverride}`,
    "at-hairline": `No heat: there are foils at the hairline. ${orOverride}`,
    cushion: `No heat: a backcombed cushion lies near the root. ${orOverride}`,
    "longer-than-usual": ({ usualMostMin, askedMin }) =>
      `Heat usually lasts ${min(usualMostMin)} at most: ${min(askedMin)} entered. ${orOverride}`,
    "too-long": ({ mostMin, askedMin }) =>
      `The product sheet allows heat for at most ${min(mostMin)}: ${min(askedMin)} entered. Shorten it.`,
    "no-minutes": "Heat must last more than 0 minutes.",
  } satisfies Sentences<HeatRefusal>)

  const first = {
    hairline: "Hair at the hairline lifts first: expected ready",
    fine: "Fine hair lifts sooner: expected ready",
  } satisfies Record<LiftsFirst, string>

  return {
    problems: {
      "no-foils": "There are no foils to time: draw one first.",
      hands: ({ count }) => `One or two people can be planned, not ${count}.`,
      "pace-share": "A person’s pace must be above 0.",
      "break-backwards": "A break must end after it begins.",
      "foil-twice": ({ foil }) => `Foil ${foil} is in the plan twice.`,
      "foil-bare": ({ foil }) =>
        `Foil ${foil}: nothing is coated; start its product nearer to the scalp, or coat more of the strand.`,
      "foil-pace": ({ foil, minutes }) =>
        `Foil ${foil}: the pace is ${t.number(minutes)}; enter minutes per foil above 0.`,
      "foil-limit": ({ foil }) => `Foil ${foil}: the product’s max time must be above 0 minutes.`,
      "roots-after-limit": ({ foil, afterMin, limitMin }) =>
        `Foil ${foil}: the roots would go on after ${t.minutes(afterMin)}, when the ends are at their max time of ${t.minutes(limitMin)}. Let them go on sooner.`,
      "foil-mix": ({ foil, mix }) => `Foil ${foil}: there is no mix ${mix}.`,
      "foil-ready": ({ foil, mix }) => `Foil ${foil}: with mix ${mix} it is not known when it may be ready.`,
      "no-bowl": ({ foil, mix }) => `Foil ${foil}: no bowl of mix ${mix} serves it.`,
      "bowl-empty": ({ mix }) => `Mix ${mix}: a bowl must hold more than 0 g.`,
      "bowl-pot-life": ({ mix }) => `Mix ${mix}: its pot life must be longer than 0 minutes.`,
      "checks-apart": "Checks must be more than 0 minutes apart.",
      ...goals,
    } satisfies Sentences<TimingProblem>,

    assumed: {
      "lift-by-sheet": ({ fromLevel, toLevel }) =>
        `From level ${t.number(fromLevel)} to ${t.number(toLevel)}: ready times are an estimate from the lift on the product sheet.`,
      "lift-by-strand": ({ fromLevel, toLevel }) =>
        `From level ${t.number(fromLevel)} to ${t.number(toLevel)}: ready times are an estimate from the product sheet and the strand test.`,
      "no-levels": ({ low, high }) =>
        `No levels entered, so times are typical ones (${t.spread(t.number(low), t.minutes(high))}, an assumption). Check the strand.`,
      "lifts-first": ({ hair, low, high, lookMin }) =>
        `${first[hair]} in ${t.spread(t.number(low * 100), t.percent(high))} of the usual minutes, an assumption. First check ${t.minutes(lookMin)} on.`,
      "roots-wait": ({ foil, byMin, others }) =>
        `Roots of foil ${foil}${others > 0 ? ` and ${t.whole(others)} more` : ""}: hands come to them up to ${t.minutes(byMin)} later than set.`,
      "learnt-pace": "Pace measured at the chair.",
      "heat-left-out": ({ why }) => `${say(heat, why)} It is left out of the clock.`,
      "heat-counted": ({ minutes, low, high }) =>
        `The ${min(minutes)} of heat count as ${t.spread(t.number(low, 1), t.number(high, 1))} times as fast as without: check as soon as the heat is off.`,
      "no-sheet": ({ mix, product, limitMin }) =>
        `Mix ${mix}: there is no sheet for “${product}”; ${min(limitMin)} is taken as its max time.`,
    } satisfies Sentences<TimingAssumption>,
    alwaysCheck: "Check early and often; take off what is ready. Never exceed the maker’s maximum time.",

    heat,

    clashTitle: (count: number) =>
      count === 0 ? "No clashes in the schedule" : t.count(count, { one: "# clash", other: "# clashes" }),
    noFix: "Partline has no fix for this: change the plan.",
    clashes: {
      "over-run": ({ foil, overMin, limitMin, others: more, piece }) =>
        `${one(foil, piece)} would go ${min(overMin)} over its maximum of ${min(limitMin)} before all are ready${others(more)}.`,
      "under-processed": ({ foil, onMin, needsMin, others: more, piece }) =>
        needsMin === null
          ? `${one(foil, piece)} would be on for ${min(onMin)} and is not expected to be ready${others(more)}.`
          : `${one(foil, piece)} would be on for ${min(onMin)} and is expected to need ${min(needsMin)}${others(more)}.`,
      "hairline-ahead": ({ waitMin }) =>
        waitMin === null
          ? "The hairline would be ready long before the back, and stay on until the common rinse."
          : `The hairline would be ready ${min(waitMin)} before the back, and stay on until the common rinse.`,
      "pot-life": ({ mix, agedMin, potLifeMin }) =>
        `A bowl of mix ${mix} would still be in use ${min(agedMin)} after mixing; its pot life is ${min(potLifeMin)}.`,
      booking: ({ chairMin: { low, mid, high }, bookingMin }) =>
        `Estimated ${t.minutes(mid)} (${t.spread(t.whole(low), t.whole(high))}); ${t.minutes(bookingMin)} are booked.`,
    } satisfies Sentences<OfPieces<ConflictCode>>,

    /** On a button; undo calls the change the same. */
    fixes: {
      "each-off": ({ piece }) => `Take each ${word(1, piece)} off when it is ready`,
      reorder: ({ piece }) => `Place the ${word(2, piece)} in another order, slowest first`,
      "weaker-early": ({ count, piece }) =>
        t.count(count, {
          one: `Weaker developer for the first ${word(1, piece)}`,
          other: `Weaker developer for the first # ${word(2, piece)}`,
        }),
      "order-and-strength": ({ count, piece }) =>
        t.count(count, {
          one: `Another order, and weaker developer for the first ${word(1, piece)}`,
          other: `Another order, and weaker developer for the first # ${word(2, piece)}`,
        }),
      "closest-together": ({ piece }) => `Bring all ${word(2, piece)} to the target closest together`,
      "fresh-bowl": ({ mixes, foils: at, piece }) =>
        `Mix a fresh bowl of ${t.and(mixes)} at ${foils(at, piece)}`,
      "second-colourist": "Work with an assistant",
      "no-drying": ({ savesMin }) => `Leave out the drying (${min(savesMin)})`,
      "later-end": ({ bookingMin, byMin }) => `Book ${t.minutes(bookingMin)}: end ${t.minutes(byMin)} later`,
      "fewer-foils": ({ foils: list, piece }) =>
        t.count(list.length, {
          one: `Leave out ${word(1, piece)} ${numbers(list)}`,
          other: `Leave out # ${word(2, piece)}, spread over both sides: ${numbers(list)}`,
        }),
      "another-day": ({ foils: list, piece }) =>
        t.count(list.length, {
          one: `Keep ${word(1, piece)} ${numbers(list)} for another day`,
          other: `Keep # ${word(2, piece)} for another day, spread over both sides: ${numbers(list)}`,
        }),
    } satisfies Sentences<OfPieces<FixCode>>,

    search: {
      working: "Working out fixes",
      stop: "Stop",
      stopped: "The search was stopped.",
      failed: "The search for fixes did not start.",
      again: "Search again",
    },
    closest: ({ nowMin, thenMin }: { nowMin: number; thenMin: number }, piece?: Piece) =>
      `The ${word(2, piece)} are expected to be ready over ${t.minutes(nowMin)}; in another order, or with weaker developer first, over ${t.minutes(thenMin)}.`,

    setAside: {
      foils,
      another: ({ foils: list, plan }: { foils: readonly number[]; plan: string }) =>
        `For another day: ${foils(list)}. They are not in the mix, the clock or the printed map. As a visit of their own they move to “${plan}”; undo brings them back here and leaves that plan where it is.`,
      /** The plan that they go to. */
      planName: (plan: string) => `${plan}, another day`,
      bringBack: "Bring them back today",
      ownVisit: "Plan them as a visit of their own",
      notMoved: (why: string) => `The foils stay here: their own plan was not saved. ${why}`,
      moved: (plan: string) => `The foils for another day are now in “${plan}”, under “Plans”.`,
      open: "Open that plan",
      notOpened: (why: string) => `That plan did not open: ${why}`,
      fresh: (list: readonly number[]) => `A fresh bowl is mixed at ${foils(list)}.`,
      usualBowls: "Share out the bowls as usual",
      damp: "The hair is not dried in the chair.",
      dry: "Dry it after all",
    },
  }
}
