import type { Neutraliser, Pigment } from "../../../../presets/formula/pigments"
import type { WheelName } from "../../../../presets/formula/toneWheel"
import type { tone as english } from "../../en/formula/tone"
import type { Tools } from "../../tools"

type Tone = ReturnType<typeof english>

/** What is toned with after rinsing. */
export const tone: typeof english = (t) => ({
  title: "Toner, nach dem Ausspülen",
  rootMelt: "Ansatzverlauf",
  noMelt: "Keiner",
  meltedDown: (mm) => `${t.mm(mm)} verzogen`,
  toner: "Toner",
  rootShade: "Ansatzton",
  mixedWith: "Gemischt mit",
  ratio: "Toner zu Entwickler",
  picture:
    "Der Farbkreis veranschaulicht die Wörter; er ist keine gemessene Farbe. Ein Toner mit Entwickler ist eine Oxidationsfarbe: Hauttest und Herstellerangaben zuerst.",

  zones: { "root-melt": "Ansatzverlauf", mids: "Längen", hairline: "Haarlinie" },
  shows: {
    "level-unknown": "Erreichte Tonhöhe noch nicht bekannt: Toner am Waschbecken wählen.",
    keep: ({ level, pigment }) => `Tonhöhe ${t.number(level, 1)} zeigt ${pigmentWords[pigment]}; so lassen.`,
    neutralise: ({ level, pigment, neutraliser }) =>
      `Tonhöhe ${t.number(level, 1)} zeigt ${pigmentWords[pigment]}; mit ${neutraliserWords[neutraliser]} neutralisieren.`,
    melt: ({ rootLevel, downMm }) =>
      rootLevel === null
        ? `Ein Ton so tief wie der Ansatz, ${t.mm(downMm)} verzogen.`
        : `Ein Ton in Tonhöhe ${t.number(rootLevel, 1)}, ${t.mm(downMm)} verzogen.`,
  },
  mix: ({ family, strength }) => {
    if (family === "root-shade") return `Ansatzton: ${strengthWords[strength]}.`
    return family === null
      ? `Toner: ${strengthWords[strength]}.`
      : `Toner aus der Familie ${familyWords[family]}: ${strengthWords[strength]}.`
  },
  families: familyWords,
  strengths: strengthWords,
  minutes: ({ low, high }) => `Kontrolle ab Minute ${t.whole(low)}; ausspülen bis ${t.minutes(high)}.`,
  bowl: {
    "toner-alone": ({ product, tonerG, clearG, wantedG }) =>
      `${tonerAndClear(t, { product, tonerG, clearG })}, für ${t.gramsRange(wantedG)} aufs Haar.`,
    "toner-mixed": ({ product, tonerG, clearG, developerG, developerMl, volume, percent, wantedG }) =>
      `${tonerAndClear(t, { product, tonerG, clearG })} + ${t.number(developerG, 1)} g (${t.number(developerMl)} ml) mit ${t.number(volume)} Vol (${t.number(percent, 1)} %), für ${t.gramsRange(wantedG)} aufs Haar.`,
  },
  wheel: {
    shows: (name) => `${wheelWords[name]} zeigt sich`,
    neutralises: (name) => `${wheelWords[name]} gleicht aus`,
  },
})

const tonerAndClear = (
  t: Tools,
  { product, tonerG, clearG }: { product: string; tonerG: number; clearG: number },
) =>
  clearG > 0
    ? `${t.number(tonerG, 1)} g ${product} + ${t.number(clearG, 1)} g Clear dazu`
    : `${t.number(tonerG, 1)} g ${product}`

const pigmentWords: Record<Pigment, string> = {
  "dark-red-brown": "dunkles Rotbraun",
  "red-brown": "Rotbraun",
  "red-orange": "Rotorange",
  orange: "Orange",
  "yellow-orange": "Gelborange",
  yellow: "Gelb",
  "pale-yellow": "Hellgelb",
  "very-pale-yellow": "sehr helles Gelb",
}

const neutraliserWords: Record<Neutraliser, string> = {
  green: "Grün",
  "blue-green": "Blaugrün",
  blue: "Blau",
  "blue-violet": "Blauviolett",
  violet: "Violett",
  "soft-violet": "zartem Violett oder Perl",
}

const familyWords: Tone["families"] = {
  ...neutraliserWords,
  "soft-violet": "Zartviolett oder Perl",
  gold: "Gold",
  "root-shade": "Ansatzton",
}

const strengthWords: Tone["strengths"] = {
  full: "volle Stärke",
  half: "halbe Stärke (mit Clear verdünnen)",
  sheer: "Clear oder ein Hauch Gold, kein Gegenton",
}

const wheelWords: Record<WheelName, string> = {
  yellow: "Gelb",
  "yellow-orange": "Gelborange",
  orange: "Orange",
  "red-orange": "Rotorange",
  red: "Rot",
  "red-violet": "Rotviolett",
  violet: "Violett",
  "blue-violet": "Blauviolett",
  blue: "Blau",
  "blue-green": "Blaugrün",
  green: "Grün",
  "yellow-green": "Gelbgrün",
}
