import type { Neutraliser, Pigment } from "../../../../presets/formula/pigments"
import type { ToneStrength } from "../../../../presets/formula/tones"
import type { WheelName } from "../../../../presets/formula/toneWheel"
import type { TonerBowlCode } from "../../../core/bowls/tonerBowl"
import type { ToneCode, ToneFamily, ToneZone } from "../../../core/tone/tone"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"

/** What is toned with after rinsing. */
export const tone = (t: Tools) => ({
  title: "Tono, tras el enjuague",
  rootMelt: "Difuminado de raíz",
  noMelt: "Ninguno",
  meltedDown: (mm: number) => `Difuminado hacia abajo ${t.mm(mm)}`,
  toner: "Matizador",
  rootShade: "Tono de raíz",
  mixedWith: "Mezclado con",
  ratio: "Matizador a oxidante",
  picture:
    "El círculo ilustra las palabras; no es un color medido. Un matizador mezclado con oxidante es una coloración de oxidación: primero la prueba de alergia y las instrucciones del fabricante.",

  zones: { "root-melt": "Difuminado de raíz", mids: "Medios", hairline: "Contorno" } satisfies Record<
    ToneZone["zone"],
    string
  >,
  /** What shows and what is done with it. */
  shows: {
    "level-unknown": "Aún no se sabe el nivel alcanzado: elija el matizador en el lavacabezas.",
    keep: ({ level, pigment }) =>
      `El nivel ${t.number(level, 1)} muestra ${pigmentWords[pigment]}; manténgalo.`,
    neutralise: ({ level, pigment, neutraliser }) =>
      `El nivel ${t.number(level, 1)} muestra ${pigmentWords[pigment]}; neutralice con ${neutraliserWords[neutraliser]}.`,
    melt: ({ rootLevel, downMm }) =>
      rootLevel === null
        ? `Un tono tan profundo como la raíz, difuminado hacia abajo ${t.mm(downMm)}.`
        : `Un tono de nivel ${t.number(rootLevel, 1)}, difuminado hacia abajo ${t.mm(downMm)}.`,
  } satisfies Sentences<ToneCode>,
  /** Which family of toner, and how strong. */
  mix: ({ family, strength }: { family: ToneFamily | null; strength: ToneStrength }) => {
    if (family === "root-shade") return `Tono de raíz: ${strengthWords[strength]}.`
    return family === null
      ? `Matizador: ${strengthWords[strength]}.`
      : `Matizador de la familia ${familyWords[family]}: ${strengthWords[strength]}.`
  },
  families: familyWords,
  strengths: strengthWords,
  minutes: ({ low, high }: { low: number; high: number }) =>
    `Revise desde el minuto ${t.whole(low)}; enjuague como tarde a los ${t.minutes(high)}.`,
  bowl: {
    "toner-alone": ({ product, tonerG, clearG, wantedG }) =>
      `${tonerAndClear(t, { product, tonerG, clearG })}, para ${t.gramsRange(wantedG)} en el cabello.`,
    "toner-mixed": ({ product, tonerG, clearG, developerG, developerMl, volume, percent, wantedG }) =>
      `${tonerAndClear(t, { product, tonerG, clearG })} + ${t.number(developerG, 1)} g (${t.number(developerMl)} mL) de ${t.number(volume)} vol (${t.number(percent, 1)}\u00a0%), para ${t.gramsRange(wantedG)} en el cabello.`,
  } satisfies Sentences<TonerBowlCode>,
  wheel: {
    shows: (name: WheelName) => `Se ve ${wheelWords[name]}`,
    neutralises: (name: WheelName) => `Lo neutraliza el ${wheelWords[name]}`,
  },
})

const tonerAndClear = (
  t: Tools,
  { product, tonerG, clearG }: { product: string; tonerG: number; clearG: number },
) =>
  clearG > 0
    ? `${t.number(tonerG, 1)} g de ${product} + ${t.number(clearG, 1)} g de su transparente`
    : `${t.number(tonerG, 1)} g de ${product}`

const pigmentWords: Record<Pigment, string> = {
  "dark-red-brown": "castaño rojizo oscuro",
  "red-brown": "castaño rojizo",
  "red-orange": "naranja rojizo",
  orange: "naranja",
  "yellow-orange": "naranja amarillento",
  yellow: "amarillo",
  "pale-yellow": "amarillo pálido",
  "very-pale-yellow": "amarillo muy pálido",
}

const neutraliserWords: Record<Neutraliser, string> = {
  green: "verde",
  "blue-green": "verde azulado",
  blue: "azul",
  "blue-violet": "azul violeta",
  violet: "violeta",
  "soft-violet": "violeta suave o perla",
}

const familyWords: Record<ToneFamily, string> = {
  ...neutraliserWords,
  gold: "dorado",
  "root-shade": "tono de raíz",
}

const strengthWords: Record<ToneStrength, string> = {
  full: "a plena intensidad",
  half: "a media intensidad (diluir con transparente)",
  sheer: "transparente o un dorado ligero, sin neutralizante",
}

const wheelWords: Record<WheelName, string> = {
  yellow: "amarillo",
  "yellow-orange": "naranja amarillento",
  orange: "naranja",
  "red-orange": "naranja rojizo",
  red: "rojo",
  "red-violet": "violeta rojizo",
  violet: "violeta",
  "blue-violet": "azul violeta",
  blue: "azul",
  "blue-green": "verde azulado",
  green: "verde",
  "yellow-green": "verde amarillento",
}
