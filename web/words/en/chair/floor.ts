import type { Piece } from "../../../core/kinds/kindRecord"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"
import { buttons } from "./buttons"
import { foilsWords } from "./calls"

/** The service while it goes on: what is next, what is on, and what is done with each foil. */
export const floor = (t: Tools) => ({
  next: "Next",
  nextFoil: (piece: Piece): string => (piece === "panel" ? "Next panel" : "Next foil"),
  allOn: (piece: Piece): string =>
    ({ foil: "Every foil is on.", panel: "Every panel is on.", both: "Every foil and panel is on." })[piece],
  what: ({ kind, place, foils }: { kind: string; place: string; foils: number }) =>
    foils === 1 ? `${t.capital(kind)}, ${place}` : `${t.capital(kind)} in ${t.whole(foils)} foils, ${place}`,
  mix: (letter: string) => `mix ${letter}`,
  now: "Now",
  atMinute: (min: number) => `At minute ${t.whole(min)}`,
  isOn: (foil: number, piece?: Piece) => `${t.capital(pieces(t).names([foil], piece))} is on`,
  /** Who placed it, by name, else by what they are. */
  by: (who: string) => `by ${who}`,
  colourist: "colourist",
  assistant: "assistant",
  /** Whose taps they are, where two work with one device. */
  whoTaps: "Who taps",
  wentOnEarlier: buttons.wentOnEarlier,
  /** A lane: who works in it, and on which side. */
  lane: (who: string) => t.capital(who),
  laneDone: "All of this side are on.",
  /** Foils of a lane that may be taken before their turn. */
  otherFoil: (piece: Piece) =>
    ({ foil: "Another foil first", panel: "Another panel first", both: "Another first" })[piece],

  onNow: "On now",
  foilsOn: (piece: Piece): string =>
    ({ foil: "Foils that are on", panel: "Panels that are on", both: "Foils and panels that are on" })[piece],
  noneOn: (piece: Piece): string =>
    ({ foil: "No foils on.", panel: "No panels on.", both: "Nothing on." })[piece],
  foil: (piece: Piece) => t.capital(pieces(t).word(1, piece)),
  foilName: (foil: number, piece?: Piece) => t.capital(pieces(t).names([foil], piece)),
  foilNames: (foils: readonly number[], piece?: Piece) => foilsWords(t, foils, piece),
  minutes: "min",
  /** Time left to the planned minute, and past it: it never slides ahead. */
  offIn: (ms: number) => `planned off in ${t.clock(ms)}`,
  offOver: (ms: number) => `planned off ${t.clock(ms)} ago`,
  offStop: "off now",
  rootsToCome: "roots to come",
  rootsOn: "Roots are on",
  rootsWentOnEarlier: "Roots went on earlier",
  offNow: (limitMin: number) => `max ${t.whole(limitMin)}: off now`,
  countedFromEarliest: "counted from earliest",

  tapFoil: (piece: Piece): string =>
    ({
      foil: "Tap a foil: checked, off, re-coated.",
      panel: "Tap a panel: checked, off, re-coated.",
      both: "Tap a foil or panel: checked, off, re-coated.",
    })[piece],
  burning: "Burning",
  checked: "Checked",
  off: buttons.off,
  reCoated: "Re-coated",

  mixNow: (mix: string) => `Mix ${mix} now`,
  /** The minute is written apart: it changes by itself. */
  bowlFor: ({ bowl, of }: { bowl: number; of: number }) => `bowl ${bowl} of ${of}, for minute`,
  rinseNow: buttons.rinseNow,
  allOfThem: (count: number) => t.count(count, { one: "the # that is on", other: "all # that are on" }),
  notReady: (foils: readonly number[], piece?: Piece) =>
    `${foilsWords(t, foils, piece)}: not at the planned time yet. Rinse all the same?`,
  rinseAll: "Rinse all",
  notYet: "Not yet",
  end: "End the service",
  tonerOn: buttons.tonerOn,
  tonerChecked: "Checked",
  tonerOff: buttons.tonerOff,
  tonerPlan: ({ product, minutes }: { product: string | null; minutes: number }) =>
    product === null ? `${t.minutes(minutes)}; choose the toner` : `${product}, ${t.minutes(minutes)}`,
  tonerTime: ({ onMs, plannedMin }: { onMs: number; plannedMin: number }) =>
    `${t.clock(onMs)} of ${t.minutes(plannedMin)}`,
  tonerDone: "rinsed off",
  skipToners: "Without toner",
  after: "After the rinse",
  heatOn: buttons.heatOn,
  heatFor: (minutes: number) => `${t.minutes(minutes)}, then check`,
  heatOff: "Heat off",
  thenCheck: "then check and let cool",

  outlook: ({ lastOnMin, rinseMin }: { lastOnMin: number; rinseMin: number }, piece: Piece) =>
    `On current pace: ${{ foil: "last foil", panel: "last panel", both: "last one" }[piece]} on at minute ${t.whole(lastOnMin)}, all off at minute ${t.whole(rinseMin)}.`,

  again: "Start another service of this plan",
  weigh: {
    title: "Weigh what is left",
    bowl: ({ bowl, mix }: { bowl: number; mix: string }) => `Bowl ${bowl}, mix ${mix}`,
    made: ({ lightenerG, developerG }: { lightenerG: number; developerG: number }) =>
      `made ${t.gramsNumber(lightenerG)} + ${t.grams(developerG)}`,
    left: "Left",
    used: (grams: number) => `${t.grams(grams)} used`,
  },
  nextVisit: {
    title: "Next visit",
    plan: "Plan the next visit",
    when: ({ from, to }: { from: string; to: string }) => `Between ${t.date(from)} and ${t.date(to)}.`,
    test: (day: string) => `Patch test on by ${t.date(day)}.`,
  },

  /** One check: what was seen. */
  check: {
    seen: (name: string) => `${name}: what you saw`,
    level: (name: string) => `${name}: level seen`,
    darker: "Half a level darker",
    lighter: "Half a level lighter",
    stretch: "Stretch",
    stretches: { ok: "OK", soft: "Limp", stop: "Stop" },
    scalp: "Scalp",
    comforts: { ok: "OK", warm: "Warm", burning: "Burning" },
    product: "Product",
    moist: "Moist",
    dry: "Dry",
    save: "Save check",
    notNow: "Not now",
  },
})
