import type { LookWindow, StrandFault } from "../../../core/lift/strandTest"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"

/** When to check, in whole minutes: earlier at the near end, later at the far end. */
export const lookWindow =
  (t: Tools) =>
  ({ lookFromMin, expectedMin: { low, high }, neverPastMin }: LookWindow) => {
    const [from, to] = [t.whole(Math.floor(low)), t.whole(Math.ceil(high))]
    const [first, most] = [t.number(lookFromMin), t.number(neverPastMin)]
    if (low > neverPastMin)
      return `Revise desde el minuto ${first}; no se espera que esté listo a tiempo; tiempo máx. ${most} min.`
    if (high > neverPastMin)
      return `Revise desde el minuto ${first}; se espera listo desde el minuto ${from}, quizá no a tiempo; tiempo máx. ${most} min.`
    return `Revise desde el minuto ${first}; se espera listo del minuto ${from} al ${to}; tiempo máx. ${most} min.`
  }

/** What is wrong with the rows of a strand test. */
export const strandFaults = (t: Tools) =>
  ({
    "no-rows": "Una prueba de mechón necesita al menos una fila: minutos y nivel visto.",
    "too-many-rows": ({ most }) => `Una prueba de mechón tiene como mucho ${most} filas.`,
    "start-off-scale": ({ level, darkest, lightest }) =>
      `El nivel inicial es ${t.number(level)}: la escala va de ${darkest} a ${lightest}.`,
    "row-off-scale": ({ row, level, darkest, lightest }) =>
      `Fila ${row}: el nivel ${t.number(level)} está fuera de la escala, que va de ${darkest} a ${lightest}.`,
    "out-of-order": ({ row, minutes, beforeMin }) =>
      `La fila ${row} es de ${t.minutes(minutes, 2)}, no posterior a ${t.minutes(beforeMin, 2)}. Ordene las filas por tiempo.`,
    "past-longest": ({ row, minutes, longestMin }) =>
      `La fila ${row} es de ${t.minutes(minutes, 2)}, más que el tiempo máx. del producto, ${t.minutes(longestMin, 2)}.`,
    darker: ({ row, level, beforeLevel }) =>
      `Fila ${row}: el nivel ${t.number(level)} es más oscuro que el ${t.number(beforeLevel)} de la revisión anterior. El cabello aclarado no se oscurece: compruebe el dato.`,
  }) satisfies Sentences<StrandFault>
