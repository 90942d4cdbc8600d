import type { Tools } from "../../tools"
import { foilsWords } from "./calls"

/** The service while it goes on: what is next, what is on, and what is done with each foil. */
export const floor = (t: Tools) => ({
  next: "Next",
  nextFoil: "Next foil",
  allOn: "Every foil is on.",
  what: ({ kind, place }: { kind: string; place: string }) => `${t.capital(kind)}, ${place}`,
  mix: (letter: string) => `mix ${letter}`,
  now: "Now",
  atMinute: (min: number) => `At minute ${t.whole(min)}`,
  isOn: (foil: number) => `Foil ${foil} is on`,
  /** Who placed it, by name, else by what they are. */
  by: (who: string) => `by ${who}`,
  colourist: "colourist",
  assistant: "assistant",
  wentOnEarlier: "It went on earlier",

  onNow: "On now",
  foilsOn: "Foils that are on",
  noneOn: "No foils on.",
  foil: "Foil",
  foilName: (foil: number) => `Foil ${foil}`,
  foilNames: (foils: readonly number[]) => foilsWords(t, foils),
  minutes: "min",
  offAbout: (min: number) => `off at about ${t.whole(min)}:00`,
  offNow: (limitMin: number) => `max ${t.whole(limitMin)}: off now`,
  countedFromEarliest: "counted from earliest",

  tapFoil: "Tap a foil: checked, off, re-coated.",
  checked: "Checked",
  off: "Off",
  reCoated: "Re-coated",

  mixNow: (mix: string) => `Mix ${mix} now`,
  /** The minute is written apart: it changes by itself. */
  bowlFor: ({ bowl, of }: { bowl: number; of: number }) => `bowl ${bowl} of ${of}, for minute`,
  rinseNow: "Rinse now",
  allOfThem: (count: number) => t.count(count, { one: "the # that is on", other: "all # that are on" }),
  end: "End the service",
  heatOn: "Heat on",
  heatFor: (minutes: number) => `${t.minutes(minutes)}, then check`,
  heatOff: "Heat off",
  thenCheck: "then check and let cool",

  outlook: ({ lastOnMin, rinseMin }: { lastOnMin: number; rinseMin: number }) =>
    `On current pace: last foil on at minute ${t.whole(lastOnMin)}, all off at minute ${t.whole(rinseMin)}.`,

  again: "Start another service of this plan",

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
