import type { ArgumentProblem } from "../../core/command/argumentProblem"
import type { LearnProblem } from "../../core/joining/readRows"
import type { Sentences } from "../say"
import type { Tools } from "../tools"
import { classProblems } from "./classProblems"
import { classVerbs, headOptions } from "./classVerbs"

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
    "consent-missing":
      "Falta --consent yes: con ello el salón dice que sus cifras se pueden pasar a otros. No contienen datos de clientes.",
    "csv-out-missing": "Falta --out: se espera la ruta del CSV que escribir.",
    "start-out-missing": "Falta --out: se espera la ruta del JSON que escribir.",
    "nothing-to-learn":
      "No hay nada que pasar a otros: ningún bol pesado después de un servicio, ninguna prueba de mechón y ningún papel cronometrado en el sillón. Indique más planes o una lista de pesadas.",
    "too-few-salons": ({ salons, least }) =>
      `${t.count(salons, { one: "# archivo", other: "# archivos" })}, uno por salón: se esperan al menos ${t.whole(least)}.`,
    "cannot-read-folder": ({ folder }) => `No se puede leer "${folder}": se espera la ruta de una carpeta.`,
    "client-missing": "Falta --client: se espera el id o el nombre que imprime el verbo clients.",
    "client-unknown": ({ client }) =>
      `--client: aquí nadie es "${client}". El verbo clients imprime quiénes son.`,
    "client-several": ({ client, ids }) =>
      `--client: hay varias fichas con el nombre "${client}": se espera uno de los id ${ids.join(", ")}.`,
    "client-out-missing": "Falta --out: se espera la ruta del JSON o HTML que escribir.",
    "sure-missing": ({ name, plans, files }) =>
      `Falta --sure yes: se borraría para siempre ${name}, ${t.count(plans, { one: "# plan", other: "# planes" })}, de ${files.join(", ")}. No se ha cambiado nada.`,
    "cannot-erase": ({ path }) => `No se puede eliminar ni escribir "${path}": lo que contiene sigue ahí.`,
    "same-rows": ({ file, other }) =>
      `"${file}" tiene las mismas filas que "${other}": indique cada salón una sola vez.`,
    "not-a-technique": ({ file, known }) =>
      `"${file}" no es una técnica: se esperaba la ruta de un archivo de técnica o una de ${known.join(", ")}.`,
    "not-a-model": ({ file, known }) =>
      `"${file}" no es un modelo: se esperaba la ruta de un plan o de un archivo de técnica, o una de ${known.join(", ")}.`,
    "names-missing": "Falta --names: se esperaba la ruta de la clase, CSV con la columna name.",
    "folder-out-missing": "Falta --out: se esperaba la ruta de la carpeta donde escribir.",
    "plan-out-missing": "Falta --out: se esperaba la ruta del plan que se escribe.",
    "learner-missing": "Falta LEARNER: se esperaba la ruta de al menos un plan después del modelo.",
    "table-out-alone": "--names es para una clase: se espera con --out, con --sheets o con ambos.",
    "learner-twice": ({ file }) =>
      `"${file}": otro archivo da el mismo nombre. Indique cada uno una vez o distíngalos con --names.`,
    "within-unusable": ({ found, known }) =>
      `--within: se esperaba ${known.join(", ")}, cada uno con un número mayor que 0, como ${known[0]}=3; se encontró "${found}".`,
    "no-room": ({ name, learner }) =>
      learner === null ? `${name} no cabe en esta cabeza.` : `${name} no cabe en la cabeza de ${learner}.`,
    "cannot-write-one": ({ path, written }) =>
      written.length === 0
        ? `No se puede escribir "${path}": se esperaba una carpeta en la que se pueda escribir. No se escribió nada.`
        : `No se puede escribir "${path}": se esperaba una carpeta en la que se pueda escribir. Escrito antes: ${written.join(", ")}.`,
  } satisfies Sentences<ArgumentProblem>,

  passedOn: "Solo números: en la lista no hay nombres, notas, productos ni días. Léala antes de pasarla.",
  joined:
    "Un salón nuevo toma este archivo en «Fórmula», «Pese sus boles»; calibrate lo toma con --start. Después sus propios boles acotan las cifras.",
  learn: learnProblems(t),
  classes: classProblems(t),
  progress: (done: number, count: number) => `${t.whole(done)} de ${t.whole(count)}`,

  overLegalLimit: (percent: number) =>
    `Nota: la ley permite como máximo ${t.number(percent)}\u00a0% en la UE y el Reino Unido en un producto capilar listo para usar.`,

  /** What each verb prints, what else there is to know of it, and each option. */
  verbs: {
    head: {
      summary:
        "Las medidas sobre la piel, la superficie con cabello y sus zonas, y los puntos de una cabeza de este tamaño.",
      details: [],
      options: headOptions,
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
      summary: "Una hoja de un plan en PDF; la de llevar a casa, también como página para un navegador.",
      details: ["--language es el idioma de la hoja; las frases sobre el comando van en el de --messages."],
      options: {
        kind: "placement, technique, take-home o record",
        paper: "a4 o letter; si no se indica, letter para en-US, si no a4",
        out: "dónde escribir el PDF; take-home que acaba en .html se escribe como página para un navegador",
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
      options: {
        start: "cifras reunidas de las que partir (learn join); las cifras iniciales si no se indica",
      },
    },
    clients: {
      summary: "Los clientes de una carpeta: quiénes, cuántos planes, su última visita y en qué archivos.",
      details: [
        "Lee los archivos .json que están en la carpeta misma: planes, fichas, archivos de clientes y copias de respaldo. Ningún",
        "plan nombra a su cliente: lo dice el archivo de un cliente o una copia. unread: archivos que nadie sabe de quién son.",
      ],
      options: {},
    },
    export: {
      summary:
        "Todo lo que una carpeta contiene de un cliente, como archivo que Partline vuelve a abrir o página para leer.",
      details: ["Contiene las respuestas de salud y no está cifrado."],
      options: {
        client: "el id o el nombre, como lo imprime el verbo clients",
        out: "dónde escribirlo; si acaba en .html es una página para leer",
      },
    },
    erase: {
      summary:
        "Borra para siempre a un cliente de una carpeta: ficha, planes y archivo, y solo lo suyo de las copias. Las técnicas quedan.",
      details: [
        "Sin --sure dice qué se borraría y no cambia nada. Imprime los archivos eliminados y reescritos, y los que no se pueden leer:",
        "revíselos usted. No alcanza a las copias en otras carpetas ni a las hojas impresas.",
      ],
      options: {
        client: "el id o el nombre, como lo imprime el verbo clients",
        sure: "yes: se borra para siempre",
      },
    },
    "learn export": {
      summary:
        "Lo que aprendió un salón, en una lista breve que pasar a otros: pesadas, pruebas de mechón y ritmos, sin datos de clientes.",
      details: [
        "Toma planes con sus servicios y listas de pesadas; un bol cuenta cuando se pesó después del servicio. Las líneas 1 y 2 de",
        "la lista son las columnas y sus unidades. Filas: weighing (kind, foils, hairG, strandAreaCm2, productG), strand (una",
        "revisión por fila) y pace (papeles cronometrados de una persona, su media y dispersión). No se escribe nada más.",
      ],
      options: {
        consent: "yes: el salón está de acuerdo en que sus cifras se pasen a otros",
        out: "dónde escribir el CSV",
      },
    },
    "learn join": {
      summary: "Las listas de tres salones o más, reunidas en aquello de lo que parte un salón nuevo.",
      details: [
        "Escribe cada cifra para un salón nuevo con su margen del 80\u00a0% (halfTimeMin: dos tercios de las cabezas) y cuánto difieren",
        "en ella los salones: proporción, una desviación típica. null con menos de tres salones; la cifra queda entonces como estaba.",
      ],
      options: {
        out: "dónde escribir las cifras reunidas, JSON",
      },
    },
    ...classVerbs,
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

const learnProblems = (t: Tools) => {
  const at = ({ line, column, found }: { line: number; column: string; found: string }) =>
    `Línea ${t.whole(line)}, ${column}: ${found === "" ? "está vacía" : `se encontró "${found}"`}`
  const strands = {
    order: "sus revisiones no van en orden de tiempo, o pasan del tiempo máximo",
    printed: "la aclaración impresa menor supera a la mayor",
    alike:
      "sus filas difieren en la concentración, la aclaración impresa, el tiempo máximo o el nivel inicial",
    "too-many": "tiene más revisiones que una prueba de mechón",
  }
  return {
    "too-large": ({ mostMb }) => `Se espera una lista de como mucho ${t.whole(mostMb)} MB. ¿Es otro archivo?`,
    "columns-missing": ({ columns }) =>
      t.count(columns.length, {
        one: `Línea 1: falta ${t.and(columns)}. Vuelva a escribir la lista con learn export.`,
        other: `Línea 1: faltan ${t.and(columns)}. Vuelva a escribir la lista con learn export.`,
      }),
    "column-unknown": ({ column }) =>
      `Línea 1: "${column}" no es una columna de una lista así. Quite la columna.`,
    unit: (cell) => `${at(cell)}; se espera la unidad ${cell.unit}.`,
    cells: ({ line, cells, columns }) =>
      `La línea ${t.whole(line)} tiene ${t.whole(cells)} valores para ${t.whole(columns)} columnas. Si los números llevan comas, escriba puntos: 4.5 por 4,5.`,
    word: (cell) =>
      cell.known.length > 0
        ? `${at(cell)}; se espera ${t.or(cell.known)}.`
        : `${at(cell)}; no se espera nada. Vacíe la casilla.`,
    number: (cell) =>
      `${at(cell)}; se espera un ${cell.isWhole ? "número entero" : "número"} de ${t.number(cell.low, 2)} a ${t.number(cell.high, 2)}. Corríjalo o quite la línea.`,
    "not-of-row": (cell) => `${at(cell)}; una fila ${cell.row} no lleva nada ahí. Vacíe la casilla.`,
    strand: ({ strand, why }) => `Mechón ${t.whole(strand)}: ${strands[why]}. Corrija sus filas o quítelas.`,
    "no-rows": "La lista no tiene filas.",
    more: ({ count }) => t.count(count, { one: "Y uno más como estos.", other: "Y # más como estos." }),
  } satisfies Sentences<LearnProblem>
}

const numbers = {
  have: "una lista de porcentajes con una coma entre ellos, 12,3",
  want: "un porcentaje, 6 o 7.5",
  grams: "una cantidad de gramos, 90 o 37.5",
}
const minutes = { pace: "minutos por papel", booking: "minutos" }

export type CommandWords = ReturnType<typeof command>
