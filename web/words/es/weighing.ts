import { calibrationFigures } from "../../../presets/weighing/calibrationFigures"
import type { WeighableCode } from "../../core/bowls/weighables"
import type { LearntFigures } from "../../core/document/salon"
import type { TrustCode } from "../../core/weighing/trust"
import type { ReadingProblem } from "../../core/weighing/weighedBowl"
import { type ListProblem, neededColumns } from "../../core/weighing/weighingCsv"
import type { Sentences } from "../say"
import type { Tools } from "../tools"
import type { CommonWords } from "./common/common"

export const weighing = (t: Tools, { foils: foilsWords, kinds, mix: mixName }: CommonWords) => ({
  done: {
    "keep-weighing": "Guardar una pesada",
    "add-list": "Añadir pesadas de una lista",
    "leave-out": "Dejar fuera una pesada",
    "count-again": "Volver a contar una pesada",
    "remove-weighing": "Quitar una pesada",
    "back-to-start": "Volver a las cifras iniciales",
    "count-all": "Volver a contar todas las pesadas",
    "take-start": "Partir de las cifras de otros salones",
    "leave-start": "Volver a las cifras del oficio",
  },

  title: "Pese sus boles",
  bowl: {
    how: "Pese el bol con su pincel antes del primer papel y después del último.",
    noFoils: "Aún no hay papeles. Luego pese cada bol, con su pincel, antes y después.",
    what: "Pesado",
    chooseOne: "Elija uno",
    before: "Antes",
    after: "Después",
    save: ({ productG }: { productG: number }) => `Guardar: ${t.number(productG)} g usados`,
    /** What was weighed, in the list to choose from and as it is saved. */
    name: {
      bowl: ({ mix, bowl, foils }) =>
        `${t.capital(mixName(mix))}, bol ${t.whole(bowl)}: ${foilsWords(foils)}`,
      foil: ({ foil }) => `Solo el papel ${t.whole(foil)}`,
      coat: ({ foil, part, mix }) =>
        `${t.capital(mixName(mix))} en ${part === "roots" ? "la raíz" : "medios y puntas"} del papel ${t.whole(foil)}`,
    } satisfies Sentences<WeighableCode>,
    /** A weighing as it is saved: the day and name of its plan, then what was weighed. */
    ofPlan: ({ date, plan, what }: { date: string; plan: string; what: string }) =>
      plan ? `${date}, ${plan}: ${what}` : `${date}: ${what}`,
    problem: readingProblems(t),
  },
  learnt: learntWords(t, kinds),
  picture: {
    name: "Gramos esperados y pesados; la lista de abajo dice lo mismo en números",
    axis: "g pesados",
    legend:
      "Arriba: gramos esperados, la barra cuatro veces de cada cinco. A lo ancho: gramos pesados. En la línea inclinada coinciden. Los puntos cuentan, las cruces parecen erróneas, los anillos quedan fuera.",
  },
  rows: {
    count: (count: number) => t.count(count, { one: "# pesada", other: "# pesadas" }),
    doubted: "Pesadas que parecen erróneas",
    looksWrong: ({ name, weighedG, expectedG }: { name: string; weighedG: number; expectedG: number }) =>
      `${name}: ${t.number(weighedG)} g pesados; las demás apuntan a unos ${t.grams(expectedG)}. Compruébela o déjela fuera.`,
    figures: ({ weighedG, expectedG }: { weighedG: number; expectedG: number }) =>
      `${t.number(weighedG)} g pesados, ${t.grams(expectedG)} esperados`,
    counts: "Cuenta",
    remove: "Quitar",
    removeThis: ({ name }: { name: string }) => `Quitar ${name}`,
  },
  start: {
    take: "Partir de las cifras de otros salones, JSON",
    leave: "Partir de las cifras del oficio",
    from: ({ salons }: { salons: number }) =>
      t.count(salons, {
        one: "Parte de las cifras de # salón. Sus propios boles las acotan.",
        other: "Parte de las cifras reunidas de # salones. Sus propios boles las acotan.",
      }),
  },
  list: {
    add: "Añadir una lista, CSV",
    save: "Guardar la lista, CSV",
    backToStart: "Volver a las cifras iniciales",
    countAll: "Volver a contar todas las pesadas",
    /** A weighing that came from a list. */
    line: ({ file, line }: { file: string; line: number }) => `${file}, línea ${t.whole(line)}`,
    problem: listProblems(t),
    /** A line that the others do not bear out. */
    doubtful: ({ line, weighedG, expectedG }: { line: number; weighedG: number; expectedG: number }) =>
      `La línea ${t.whole(line)} parece errónea: ${t.number(weighedG, 1)} g pesados; las demás apuntan a unos ${t.number(expectedG, 1)} g. Compruébela o déjela fuera.`,
  },
})

export type WeighingWords = ReturnType<typeof weighing>

const readingProblems = (t: Tools) => {
  const said = ({ beforeG, afterG }: ReadingProblem) =>
    `${t.number(beforeG, 1)} g antes y ${t.number(afterG, 1)} g después`
  return {
    "not-read": (read) =>
      `${said(read)}: introduzca ambas lecturas en gramos, con el mismo bol y el mismo pincel.`,
    gained: (read) => `${said(read)}: el bol pesa más después que antes. ¿Se cambiaron las lecturas?`,
    "nothing-placed": (read) => `${said(read)}: no se usó nada. Deje fuera este bol.`,
  } satisfies Sentences<ReadingProblem>
}

const learntWords = (t: Tools, kinds: CommonWords["kinds"]) => {
  const { share, probability } = calibrationFigures.trust
  const times = t.number(10 * probability)
  const stands = ({ withinShare }: { withinShare: number }) =>
    `La cifra central queda a ${t.percent(withinShare)} o menos de la real, 9 veces de cada 10.`
  return {
    trust: {
      "no-agreement":
        "Estas pesadas no coinciden lo bastante para decir cuánto puede desviarse la cifra central.",
      trusted: (trust) => `${stands(trust)} Se puede confiar en ella.`,
      "more-needed": (trust) =>
        `${stands(trust)} ${t.count(trust.more, {
          one: `Hace falta una pesada más como estas para quedar a ${t.percent(share)} o menos, ${times} veces de cada 10.`,
          other: `Hacen falta # pesadas más como estas para quedar a ${t.percent(share)} o menos, ${times} veces de cada 10.`,
        })}`,
      "too-many-needed": (trust) =>
        `${stands(trust)} Ningún número de pesadas como estas la llevaría a ${t.percent(share)} o menos, ${times} veces de cada 10.`,
    } satisfies Sentences<TrustCode>,
    byStart: "Hasta entonces este plan usa las cifras iniciales, que son suposiciones.",
    /** What the figures of this plan were learnt from. */
    byWeighings: (learnt: readonly Pick<LearntFigures, "product" | "kind" | "weighings">[]) =>
      `Este plan usa lo aprendido de ${t.and(
        learnt.map(({ product, kind, weighings }) => {
          const from = [product, kind && kinds[kind]].filter(Boolean).join(", ") || "todas las pesadas"
          return t.count(weighings, { one: `${from} (# pesada)`, other: `${from} (# pesadas)` })
        }),
      )}.`,
    figure: "Cifra",
    start: "Para empezar",
    weighed: "Según lo pesado",
    names: {
      lossG: "Pérdida por papel",
      soakGPerG: "Absorbe, por gramo de cabello",
      coatMgPerCm2: "Cubre cada cm² de cabello",
    },
    grams: ({ low, mid, high }: { low: number; mid: number; high: number }) =>
      `${t.number(mid)} g (de ${t.number(low)} a ${t.number(high)})`,
    milligrams: ({ low, mid, high }: { low: number; mid: number; high: number }) =>
      `${t.number(mid)} mg (de ${t.number(low)} a ${t.number(high)})`,
  }
}

const listProblems = (t: Tools) => {
  const columns = `se esperan las columnas ${neededColumns.join(",")} (y foils, donde una fila sea un bol de varios)`
  const at = ({ line, column }: { line: number; column: string }) => `Línea ${t.whole(line)}, ${column}`
  const found = (cell: { found: string }) =>
    cell.found === "" ? "está vacía" : `se encontró "${cell.found}"`
  return {
    "file-too-large": ({ mostMb }) =>
      `Una lista de pesadas tiene como mucho ${t.whole(mostMb)} MB. ¿Es otro archivo?`,
    "header-empty": `La línea 1 está vacía: ${columns}.`,
    "header-separator": ({ separator }) =>
      separator === "tabs"
        ? "Línea 1: las columnas están separadas por tabuladores. Guarde la lista con comas entre columnas y puntos en los números, 4.5."
        : "Línea 1: las columnas están separadas por punto y coma. Guarde la lista con comas entre columnas y puntos en los números, 4.5.",
    "columns-missing": ({ columns: missing }) =>
      t.count(missing.length, {
        one: `Línea 1: falta ${t.and(missing)}; ${columns}.`,
        other: `Línea 1: faltan ${t.and(missing)}; ${columns}.`,
      }),
    "column-unknown": ({ column }) => `Línea 1: "${column}" es una columna de más; ${columns}.`,
    cells: ({ line, cells, columns }) =>
      `La línea ${t.whole(line)} tiene ${t.whole(cells)} valores para ${t.whole(columns)} columnas. Si los números llevan comas, escriba puntos: 4.5 por 4,5.`,
    "decimal-comma": (cell) => `${at(cell)}: ${found(cell)}; escriba un punto, ${cell.write}.`,
    "no-number": (cell) => `${at(cell)}: se espera un número, ${found(cell)}.`,
    negative: (cell) =>
      `${at(cell)}: se espera 0 o más, ${found(cell)}. Pese otra vez o deje fuera la línea.`,
    "nothing-used": (cell) =>
      `${at(cell)}: se esperan gramos por encima de 0, ${found(cell)}. Deje fuera la línea si no se usó nada.`,
    "not-whole": (cell) => `${at(cell)}: se espera un número entero desde 1, ${found(cell)}.`,
    "too-large": (cell) => `${at(cell)}: se espera como mucho ${t.whole(cell.most)}, ${found(cell)}.`,
    "more-slips": ({ count }) =>
      t.count(count, { one: "Y uno más como estos.", other: "Y # más como estos." }),
  } satisfies Sentences<ListProblem>
}
