import type { Neutraliser, Pigment } from "../../../../presets/formula/pigments"
import type { ToneStrength } from "../../../../presets/formula/tones"
import type { WheelName } from "../../../../presets/formula/toneWheel"
import type { TonerBowlCode } from "../../../core/bowls/tonerBowl"
import type { ToneCode, ToneFamily, ToneZone } from "../../../core/tone/tone"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"

/** What is toned with after rinsing. */
export const tone = (t: Tools) => ({
  title: "Patine, après rinçage",
  rootMelt: "Fondu racine",
  noMelt: "Aucun",
  meltedDown: (mm: number) => `Fondu sur ${t.mm(mm)}`,
  toner: "Patine",
  rootShade: "Nuance racine",
  mixedWith: "Mélangée à",
  ratio: "Patine pour oxydant",
  picture:
    "La roue illustre les mots ; ce n’est pas une couleur mesurée. Une patine mélangée à l’oxydant est une coloration d’oxydation : d’abord touche d’essai et mode d’emploi du fabricant.",

  zones: { "root-melt": "Fondu racine", mids: "Longueurs", hairline: "Lisière" } satisfies Record<
    ToneZone["zone"],
    string
  >,
  /** What shows and what is done with it. */
  shows: {
    "level-unknown": "Hauteur atteinte pas encore connue : choisissez la patine au bac.",
    keep: ({ level, pigment }) =>
      `La hauteur ${t.number(level, 1)} laisse voir un fond ${pigmentWords[pigment]} ; le garder.`,
    neutralise: ({ level, pigment, neutraliser }) =>
      `La hauteur ${t.number(level, 1)} laisse voir un fond ${pigmentWords[pigment]} ; neutraliser avec du ${neutraliserWords[neutraliser]}.`,
    melt: ({ rootLevel, downMm }) =>
      rootLevel === null
        ? `Une nuance aussi foncée que la racine, fondue sur ${t.mm(downMm)}.`
        : `Une nuance à la hauteur ${t.number(rootLevel, 1)}, fondue sur ${t.mm(downMm)}.`,
  } satisfies Sentences<ToneCode>,
  /** Which family of toner, and how strong. */
  mix: ({ family, strength }: { family: ToneFamily | null; strength: ToneStrength }) => {
    if (family === "root-shade") return `Nuance racine : ${strengthWords[strength]}.`
    return family === null
      ? `Patine : ${strengthWords[strength]}.`
      : `Patine, famille ${familyWords[family]} : ${strengthWords[strength]}.`
  },
  families: familyWords,
  strengths: strengthWords,
  minutes: ({ low, high }: { low: number; high: number }) =>
    `Contrôler dès la minute ${t.whole(low)} ; rincer à ${t.minutes(high)} au plus tard.`,
  bowl: {
    "toner-alone": ({ product, tonerG, clearG, wantedG }) =>
      `${tonerAndClear(t, { product, tonerG, clearG })}, pour ${t.gramsRange(wantedG)} sur les cheveux.`,
    "toner-mixed": ({ product, tonerG, clearG, developerG, developerMl, volume, percent, wantedG }) =>
      `${tonerAndClear(t, { product, tonerG, clearG })} + ${t.number(developerG, 1)} g (${t.number(developerMl)} mL) à ${t.number(volume)} vol (${t.number(percent, 1)} %), pour ${t.gramsRange(wantedG)} sur les cheveux.`,
  } satisfies Sentences<TonerBowlCode>,
  wheel: {
    shows: (name: WheelName) => `On voit : ${wheelWords[name]}`,
    neutralises: (name: WheelName) => `Le neutralise : ${wheelWords[name]}`,
  },
})

const tonerAndClear = (
  t: Tools,
  { product, tonerG, clearG }: { product: string; tonerG: number; clearG: number },
) =>
  clearG > 0
    ? `${t.number(tonerG, 1)} g ${product} + ${t.number(clearG, 1)} g de son transparent`
    : `${t.number(tonerG, 1)} g ${product}`

const pigmentWords: Record<Pigment, string> = {
  "dark-red-brown": "brun-rouge foncé",
  "red-brown": "brun-rouge",
  "red-orange": "rouge-orangé",
  orange: "orangé",
  "yellow-orange": "jaune-orangé",
  yellow: "jaune",
  "pale-yellow": "jaune pâle",
  "very-pale-yellow": "jaune très pâle",
}

const neutraliserWords: Record<Neutraliser, string> = {
  green: "vert",
  "blue-green": "bleu-vert",
  blue: "bleu",
  "blue-violet": "bleu-violet",
  violet: "violet",
  "soft-violet": "violet doux ou nacré",
}

const familyWords: Record<ToneFamily, string> = {
  ...neutraliserWords,
  gold: "doré",
  "root-shade": "nuance racine",
}

const strengthWords: Record<ToneStrength, string> = {
  full: "pure",
  half: "à moitié (diluer au transparent)",
  sheer: "transparent ou doré léger, sans neutralisant",
}

const wheelWords: Record<WheelName, string> = {
  yellow: "jaune",
  "yellow-orange": "jaune-orangé",
  orange: "orangé",
  "red-orange": "rouge-orangé",
  red: "rouge",
  "red-violet": "rouge-violet",
  violet: "violet",
  "blue-violet": "bleu-violet",
  blue: "bleu",
  "blue-green": "bleu-vert",
  green: "vert",
  "yellow-green": "jaune-vert",
}
