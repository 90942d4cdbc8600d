import type { ArgumentProblem } from "../../core/command/argumentProblem"
import type { Sentences } from "../say"
import type { Tools } from "../tools"

/** The headless command: what it explains of itself, and what it cannot use. */
export const command = (t: Tools) => ({
  done: {},
  eachExplains: "Cada verbo se explica con --help.",
  failed: (why: string) => `Partline no pudo hacerlo: ${why}`,
  language: (tags: readonly string[]) => `idioma de las frases: ${tags.join(", ")}; en-GB si no se indica`,

  problems: {
    "unknown-verb": ({ verb, known }) => `"${verb}" no es un verbo: se espera ${known.join(", ")}.`,
    "unknown-option": ({ option, known }) =>
      known.length > 0
        ? `--${option} no es una opción de este verbo: se espera ${known.map((name) => `--${name}`).join(", ")}.`
        : `--${option} no es una opción de este verbo: no se espera ninguna opción.`,
    "given-twice": ({ option }) => `--${option} aparece dos veces: se espera una vez.`,
    "no-value": ({ option }) => `--${option}: se espera un valor después.`,
    "no-file-expected": ({ file }) => `"${file}" no se espera aquí: este verbo no toma archivo.`,
    "file-missing": "Falta FILE: se espera la ruta de un plan.",
    "one-file-too-many": ({ file }) => `"${file}" es un archivo de más: se espera la ruta de un solo plan.`,
    "not-a-choice": ({ option, known, found }) =>
      found === null
        ? `Falta --${option}: se espera ${t.or(known)}.`
        : `--${option}: se espera ${t.or(known)}, se encontró "${found}".`,
    "out-missing": "Falta --out: se espera la ruta del PDF que escribir.",
    "cannot-write": ({ path }) =>
      `--out: no se puede escribir "${path}": se espera una ruta en una carpeta que exista.`,
    "cannot-read": ({ file }) =>
      `No se puede leer "${file}": se espera la ruta de un plan guardado por Partline.`,
    "cannot-read-list": ({ file }) =>
      `No se puede leer "${file}": se espera la ruta de una lista de pesadas, CSV.`,
    "head-choose":
      "El tamaño de la cabeza: se espera --length --breadth --height o bien --around --over --front-to-nape.",
    "measure-missing": ({ option }) => `Falta --${option}: se esperan milímetros.`,
    "measure-unusable": ({ option, found }) =>
      `--${option}: se esperan milímetros por encima de 0, se encontró "${found}".`,
    "number-missing": ({ option }) => `Falta --${option}: se espera ${numbers[option]}.`,
    "number-unusable": ({ option, found }) =>
      `--${option}: se espera ${numbers[option]}, se encontró "${found}".`,
    "minutes-unusable": ({ option, found }) =>
      `--${option}: se esperan ${minutes[option]} por encima de 0, se encontró "${found}".`,
    "levels-together": "--from y --to: se esperan los dos niveles, o ninguno.",
  } satisfies Sentences<ArgumentProblem>,

  overLegalLimit: (percent: number) =>
    `Nota: la UE y el Reino Unido permiten como máximo ${t.number(percent)}\u00a0% en un producto capilar listo para usar.`,

  /** What each verb prints, what else there is to know of it, and each option. */
  verbs: {
    head: {
      summary:
        "Las medidas sobre la piel, la superficie con cabello y sus zonas, y los puntos de una cabeza de este tamaño.",
      details: [],
      options: {
        length: "mm, de la ceja a la parte trasera de la cabeza, con calibre",
        breadth: "mm, en lo más ancho, con calibre",
        height: "mm, de la oreja a lo más alto, con calibre",
        around: "mm, alrededor de la cabeza, con cinta",
        over: "mm, de oreja a oreja por encima, con cinta",
        "front-to-nape": "mm, del contorno frontal a la nuca por encima, con cinta",
        hairline: "round, straight, receding o peaked; round si no se indica",
      },
    },
    measure: {
      summary:
        "Las cifras de cada sección de un plan, en el orden de aplicación, y sus totales, sin contar dos veces ningún cabello.",
      details: [],
      options: {},
    },
    check: {
      summary:
        "Si el plan se puede mezclar, con bloqueos y advertencias: salida 1 por un bloqueo, 3 por lo que no se preguntó, 0 con visto bueno.",
      details: [],
      options: {},
    },
    mix: {
      summary: "Qué mezclar para el plan: concentración, gramos necesarios y cada bol con su minuto.",
      details: [],
      options: {},
    },
    sheet: {
      summary: "Una hoja de un plan en PDF.",
      details: ["--language es el idioma de la hoja; las frases sobre el comando van en el de --messages."],
      options: {
        kind: "placement, technique, take-home o record",
        paper: "a4 o letter; si no se indica, letter para en-US, si no a4",
        out: "dónde escribir el PDF",
        front:
          "el frente de cara a su cliente (facing), o como en el espejo (mirror); facing si no se indica",
        messages: "idioma de las frases sobre el comando; en-GB si no se indica",
      },
    },
    validate: {
      summary: "Si un archivo es un plan que se puede abrir y, si no, qué tiene mal.",
      details: [],
      options: {},
    },
    blend: {
      summary: "Gramos de cada botella que juntos dan la concentración deseada, en masa.",
      details: [],
      options: {
        have: "porcentajes de las botellas, con una coma entre ellos: 12,3",
        want: "porcentaje deseado: 6",
        grams: "gramos deseados en total: 90",
      },
    },
    calibrate: {
      summary:
        "Gramos por papel, absorción y cobertura aprendidos de papeles o boles pesados (columnas hairG,strandAreaCm2,productG y, para boles, foils), con márgenes del 80\u00a0%.",
      details: [],
      options: {},
    },
    timing: {
      summary:
        "Cuándo se pone cada papel, puede estar listo y se retira, los boles y las revisiones, y los conflictos.",
      details: [
        "Escribe foils, bowls, looks, firstOnMin, lastOnMin, rinseMin y conflicts; además chairMin (toda la cita, un margen),",
        "heat (cuándo se pone y se quita, o null), steps (enjuagar, desenredar, matizador por zona, secar) y, de cada bol, su",
        "mezcla y secciones. Un extremo de readyMin es null donde no se alcanza a tiempo el nivel. Reglas de conflicts: over-run,",
        "under-processed, pot-life, booking y hairline-ahead (un enjuague, y el contorno listo mucho antes que la parte trasera).",
      ],
      options: {
        pace: "minutos por papel, de uno al siguiente; el ritmo del plan si no se indica",
        hands: "1: colorista, 2: con asistente; como diga el plan si no se indica",
        rinse:
          "each: cada papel se retira cuando está listo; together: un enjuague; como diga el plan si no se indica",
        from: "nivel actual del cabello, 1 a 10; con --to; los niveles del plan si no se indica",
        to: "nivel deseado; sin él, los papeles están listos cuando lo está la mayoría",
        booking: "minutos reservados; la reserva del plan si no se indica",
      },
    },
  },
})

const numbers = {
  have: "una lista de porcentajes con una coma entre ellos, 12,3",
  want: "un porcentaje, 6 o 7.5",
  grams: "una cantidad de gramos, 90 o 37.5",
}
const minutes = { pace: "minutos por papel", booking: "minutos" }

export type CommandWords = ReturnType<typeof command>
