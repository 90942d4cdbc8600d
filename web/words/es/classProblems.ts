import type { classProblems as english } from "../en/classProblems"

/** What is wrong with the list of a class or of its heads, a row of it by its line. */
export const classProblems: typeof english = (t) => ({
  "too-large": ({ mostMb }) =>
    `Se esperaba una lista de ${t.whole(mostMb)} MB como máximo. ¿Es otro archivo?`,
  "columns-missing": ({ columns }) =>
    `Línea 1: falta ${t.and(columns)}. Se espera un encabezado con estas columnas.`,
  "column-twice": ({ column }) => `Línea 1: la columna "${column}" está dos veces. Deje una.`,
  "no-rows": "La lista no tiene filas bajo el encabezado.",
  "cell-empty": ({ line, column }) =>
    `Línea ${t.whole(line)}, ${column}: está vacía. Rellénela o quite la línea.`,
  "no-file-name": ({ line, found }) =>
    `Línea ${t.whole(line)}, name: "${found}" no puede ser el nombre de un archivo. Use letras o números, 80 como máximo.`,
  twice: ({ line, first, column, found }) =>
    `Línea ${t.whole(line)}, ${column}: "${found}" da el mismo archivo que la línea ${t.whole(first)}. Distíngalos.`,
  "no-number": ({ line, column, found }) =>
    `Línea ${t.whole(line)}, ${column}: se esperaban milímetros por encima de 0, se encontró "${found}".`,
  measures: ({ line }) =>
    `Línea ${t.whole(line)}: se espera length, breadth, height o bien around, over, front-to-nape.`,
  "no-hairline": ({ line, found, known }) =>
    `Línea ${t.whole(line)}, hairline: se esperaba ${t.or(known)}, se encontró "${found}".`,
  "head-size": ({ line }) => `Línea ${t.whole(line)}: ninguna cabeza tiene estas medidas.`,
  "not-in-class": ({ line, found }) =>
    `Línea ${t.whole(line)}, name: nadie de la clase es "${found}". Escríbalo como en --names.`,
  "learner-without-file": ({ line, name, found }) =>
    found === ""
      ? `Línea ${t.whole(line)}, file: ${name} no tiene. Rellénela o quite la línea.`
      : `Línea ${t.whole(line)}, file: "${found}" de ${name} no está entre los archivos nombrados una vez tras el modelo.`,
  "file-without-learner": ({ found }) => `"${found}" no es de nadie de la clase. Añada una línea.`,
})
