import type { ProductSheet } from "../../../../presets/formula/productSheet"
import type { MinuteField, SheetProblem } from "../../../core/mixing/productSheet"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"

/** What is printed on a tub, typed in field by field. */
export const productSheets = (t: Tools) => ({
  title: "Sus fichas de producto",
  saved: "Fichas guardadas",
  add: "Añadir una ficha",
  fromInvented: "o partir de una inventada",
  chooseOne: "Elija una",

  name: "Nombre en el bote",
  kind: "Tipo",
  kinds: {
    lightener: "Decolorante",
    "oxidative-toner": "Matizador con oxidante",
    "root-shade": "Tono de raíz",
    "direct-toner": "Matizador sin oxidante",
  } satisfies Record<ProductSheet["kind"], string>,
  form: "Se presenta en",
  forms: { powder: "Polvo", clay: "Arcilla", cream: "Crema", liquid: "Líquido" } satisfies Record<
    ProductSheet["form"],
    string
  >,
  ratio: "Partes de oxidante por 1 de producto, en peso",
  thickest: "Más espesa",
  thinnest: "Más fluida",
  parts: "partes",

  developers: "Oxidantes permitidos",
  volume: ({ volume, percent }: { volume: number; percent: number }) =>
    `${t.number(volume)} vol, ${t.number(percent)}\u00a0%`,
  addVolume: (volume: number) => `Añadir ${t.number(volume)} vol`,
  removeVolume: (volume: number) => `Quitar ${t.number(volume)} vol`,
  otherVolume: "u otro",
  liftsFrom: "Aclara de",
  liftsTo: "a",

  longest: "Tiempo máximo",
  potLife: "Vida útil",
  firstCheck: "Primera revisión",
  onScalp: "¿Permitido en cuero cabelludo?",
  patchTest: "¿Exige el fabricante prueba de alergia?",
  heat: "¿Calor permitido?",
  heatMost: "Calor, máximo",
  answers: { yes: "Sí", no: "No", silent: "No lo dice" },

  additives: "Aditivos permitidos",
  additiveName: "Nombre",
  additiveGrams: "Por gramo de producto",
  replaces: "¿En lugar de oxidante?",
  addAdditive: "Añadir un aditivo",
  removeAdditive: "Quitar",

  price: "Precio",
  priceFor: "por",

  beforeSaving: "Antes de poder guardarla",
  save: "Guardar esta ficha",
  cancel: "Cancelar",
  remove: "Quitar esta ficha",
  nameTaken: ({ name }: { name: string }) => `Ya hay una ficha de ${name}. Abra esa.`,
  problem: sheetProblemWords(t),
})

const minuteNames: Record<MinuteField, string> = {
  longestMin: "Tiempo máximo",
  heatMin: "Calor",
  potLifeMin: "Vida útil",
}

const sheetProblemWords = (t: Tools) => {
  const ratio = ({ low, high }: { low: number; high: number }) =>
    `1 : ${t.number(low)} a 1 : ${t.number(high)}`
  const usualRatio = `de ${t.number(1.5)} a ${t.number(2.5)}`
  return {
    "no-name": "Nombre: el producto no tiene. Introduzca el que figura en el bote.",
    "no-ratio": `Proporción: sin introducir. Introduzca partes de oxidante por 1 de producto, por ejemplo ${usualRatio}.`,
    "ratio-impossible": (said) =>
      `Proporción: ${ratio(said)} no es una proporción de mezcla. Introduzca partes de oxidante por 1 de producto, por ejemplo ${usualRatio}.`,
    "ratio-backwards": (said) =>
      `Proporción: ${ratio(said)} va al revés. Introduzca primero la mezcla más espesa: de ${t.number(said.high)} a ${t.number(said.low)}.`,
    "ratio-upside-down": (said) =>
      `Proporción: ${ratio(said)} es más producto que oxidante. Si el bote dice 1 : ${t.number(1 / said.high)}, introduzca ${t.number(1 / said.high)}.`,
    "no-developers":
      "Oxidantes: ninguno introducido. Añada cada concentración que permita la ficha, por ejemplo 10, 20 y 30 vol.",
    "developer-twice": ({ volume }) => `Oxidantes: ${t.number(volume)} vol figura dos veces. Quite uno.`,
    "developer-impossible": ({ volume, mostVolume, mostPercent }) =>
      `Oxidantes: ${t.number(volume)} vol no es un oxidante. Introduzca de 1 a ${t.number(mostVolume)} vol: como máximo ${t.number(mostPercent)}\u00a0% en la UE y el Reino Unido.`,
    "lift-impossible": ({ volume, low, high, mostLevels }) =>
      `Oxidantes: de ${t.number(low)} a ${t.number(high)} niveles para ${t.number(volume)} vol no es una aclaración. Introduzca primero la cifra menor, de 0 a ${t.number(mostLevels)}, o deje ambas vacías.`,
    "lift-falls": ({ volume, weakerVolume }) =>
      `Oxidantes: ${t.number(volume)} vol aclara menos que ${t.number(weakerVolume)} vol. Compruebe ambos en el bote.`,
    "minutes-impossible": ({ field, minutes, least, most }) =>
      `${minuteNames[field]}: ${t.number(minutes)} minutos no es posible. Introduzca de ${t.whole(least)} a ${t.whole(most)}, o déjelo vacío si la ficha no lo dice.`,
    "heat-past-longest": "Calor: más que el tiempo máximo. Compruebe ambos en el bote.",
    "additive-no-name": "Aditivos: uno no tiene nombre. Introduzca el que figura en la botella, o quítelo.",
    "additive-grams": ({ name, gPerG }) =>
      name
        ? `Aditivos: ${t.number(gPerG)} g de ${name} por 1 g de producto. Introduzca de 0 a 1 g.`
        : `Aditivos: ${t.number(gPerG)} g por 1 g de producto. Introduzca de 0 a 1 g.`,
    "price-impossible": "Precio: introduzca un importe de 0 o más y los gramos que compra, o déjelo vacío.",
  } satisfies Sentences<SheetProblem>
}
