import type { Neutraliser, Pigment } from "../../../../presets/formula/pigments"
import type { ToneStrength } from "../../../../presets/formula/tones"
import type { WheelName } from "../../../../presets/formula/toneWheel"
import type { TonerBowlCode } from "../../../core/bowls/tonerBowl"
import type { ToneCode, ToneFamily, ToneZone } from "../../../core/tone/tone"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"

/** What is toned with after rinsing. */
export const tone = (t: Tools, strengths = t.spelled(strengthWords)) => ({
  title: "Tone, after rinsing",
  rootMelt: "Root melt",
  noMelt: "None",
  meltedDown: (mm: number) => `Melted down ${t.mm(mm)}`,
  toner: "Toner",
  rootShade: "Root shade",
  mixedWith: "Mixed with",
  ratio: "Toner to developer",
  picture:
    "The wheel illustrates the words; it is not a measured colour. A toner mixed with developer is an oxidative colour: patch test and maker’s directions first.",

  zones: { "root-melt": "Root melt", mids: "Mid-lengths", hairline: "Hairline" } satisfies Record<
    ToneZone["zone"],
    string
  >,
  /** What shows and what is done with it. */
  shows: {
    "level-unknown": "Level reached not known yet: choose the toner at the basin.",
    keep: ({ level, pigment }) => `Level ${t.number(level, 1)} shows ${pigmentWords[pigment]}; keep it.`,
    neutralise: ({ level, pigment, neutraliser }) =>
      `Level ${t.number(level, 1)} shows ${pigmentWords[pigment]}; neutralise with ${neutraliserWords[neutraliser]}.`,
    melt: ({ rootLevel, downMm }) =>
      rootLevel === null
        ? `A shade as deep as the root, melted down ${t.told.mm(downMm)}.`
        : `A shade at level ${t.number(rootLevel, 1)}, melted down ${t.told.mm(downMm)}.`,
  } satisfies Sentences<ToneCode>,
  /** Which family of toner, and how strong. */
  mix: ({ family, strength }: { family: ToneFamily | null; strength: ToneStrength }) => {
    if (family === "root-shade") return `Root shade: ${strengths[strength]}.`
    return family === null
      ? `Toner: ${strengths[strength]}.`
      : `Toner of the ${familyWords[family]} family: ${strengths[strength]}.`
  },
  families: familyWords,
  strengths,
  minutes: ({ low, high }: { low: number; high: number }) =>
    `Check from minute ${t.whole(low)}; rinse by ${t.minutes(high)}.`,
  bowl: {
    "toner-alone": ({ product, tonerG, clearG, wantedG }) =>
      `${tonerAndClear(t, { product, tonerG, clearG })}, for ${t.told.gramsRange(wantedG)} on the hair.`,
    "toner-mixed": ({ product, tonerG, clearG, developerG, developerMl, volume, percent, wantedG }) =>
      `${tonerAndClear(t, { product, tonerG, clearG })} + ${t.number(developerG, 1)} g (${t.number(developerMl)} mL) of ${t.number(volume)} vol (${t.number(percent, 1)} %), for ${t.told.gramsRange(wantedG)} on the hair.`,
  } satisfies Sentences<TonerBowlCode>,
  wheel: {
    shows: (name: WheelName) => `${wheelWords[name]} shows`,
    neutralises: (name: WheelName) => `${wheelWords[name]} neutralises it`,
  },
})

const tonerAndClear = (
  t: Tools,
  { product, tonerG, clearG }: { product: string; tonerG: number; clearG: number },
) =>
  clearG > 0
    ? `${t.told.grams(tonerG, 1)} ${product} + ${t.told.grams(clearG, 1)} of its clear`
    : `${t.told.grams(tonerG, 1)} ${product}`

const pigmentWords: Record<Pigment, string> = {
  "dark-red-brown": "dark red-brown",
  "red-brown": "red-brown",
  "red-orange": "red-orange",
  orange: "orange",
  "yellow-orange": "yellow-orange",
  yellow: "yellow",
  "pale-yellow": "pale yellow",
  "very-pale-yellow": "very pale yellow",
}

const neutraliserWords: Record<Neutraliser, string> = {
  green: "green",
  "blue-green": "blue-green",
  blue: "blue",
  "blue-violet": "blue-violet",
  violet: "violet",
  "soft-violet": "soft violet or pearl",
}

const familyWords: Record<ToneFamily, string> = {
  ...neutraliserWords,
  gold: "gold",
  "root-shade": "root shade",
}

const strengthWords: Record<ToneStrength, string> = {
  full: "full strength",
  half: "half strength (dilute with clear)",
  sheer: "clear or a sheer gold, no neutraliser",
}

const wheelWords: Record<WheelName, string> = {
  yellow: "yellow",
  "yellow-orange": "yellow-orange",
  orange: "orange",
  "red-orange": "red-orange",
  red: "red",
  "red-violet": "red-violet",
  violet: "violet",
  "blue-violet": "blue-violet",
  blue: "blue",
  "blue-green": "blue-green",
  green: "green",
  "yellow-green": "yellow-green",
}
