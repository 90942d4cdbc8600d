import type { Expected, Found } from "../../../core/fields/problem"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"
import { kinded, listed, units } from "./fields"

const quoted = (text: string) => `"${text}"`

/** What a field must hold and what stands there: the words of a file, told as they are written in it. */
export function fieldSentences(t: Tools) {
  const figure = (value: number) => t.number(value, 5)
  const span = (low: number, high: number) => `${figure(low)} a ${figure(high)}`
  const found = (what: Found): string => {
    switch (what.is) {
      case "missing":
        return "pero falta"
      case "nothing":
        return "no se encontró nada (null)"
      case "group":
        return "se encontró un grupo de campos"
      case "endless-number":
        return "se encontró un número sin fin"
      case "text":
        return `se encontró ${quoted(what.text)}`
      case "number":
        return `se encontró ${figure(what.value)}`
      case "truth":
        return `se encontró ${what.value}`
      case "list":
        return `se encontró una lista de ${t.whole(what.length)}`
    }
  }
  const wanted: Sentences<Expected> = {
    number: ({ low, high, unit }) => `se espera de ${span(low, high)} ${units[unit]}`.trimEnd(),
    "whole-number": ({ low, high }) => `se espera un número entero de ${span(low, high)}`,
    choice: ({ choices }) => `se espera ${t.or(choices.map(quoted))}`,
    "one-or-two": "se espera 1 o 2",
    line: ({ most }) => `se espera una línea de como mucho ${t.whole(most)} letras`,
    "plain-line": ({ most }) =>
      `se espera una línea de como mucho ${t.whole(most)} letras, sin caracteres de control`,
    lines: ({ most }) => `se esperan como mucho ${t.whole(most)} letras`,
    "plain-lines": ({ most }) => `se esperan como mucho ${t.whole(most)} letras, sin caracteres de control`,
    id: "se esperan de 1 a 64 letras, cifras, guiones o guiones bajos",
    "mix-letter": 'se espera una letra mayúscula, como "A"',
    day: 'se espera un día escrito como "2026-03-09"',
    moment: 'se espera un día y una hora escritos como "2026-03-09T14:30:00Z"',
    point: "se espera un punto del mapa del cuero cabelludo, dos números en radianes",
    coordinate: ({ reach }) => `se espera un número en radianes de ${span(-reach, reach)}`,
    list: ({ low, high, of }) =>
      low > 0
        ? `se esperan de ${t.whole(low)} a ${t.whole(high)} ${listed[of]}`
        : `se esperan como mucho ${t.whole(high)} ${listed[of]}`,
    group: ({ fields }) => `se espera un grupo de ${fields.join(", ")}`,
    kind: ({ of, kinds }) => kinded[of](t.or(kinds.map(quoted))),
    "chair-note": "se espera una nota del sillón",
    "true-or-left-out": "se espera true, o el campo omitido",
    "less-than-to": 'se espera menos que "to" (la raíz es 0, las puntas son 1)',
    "no-more-than-high": 'se espera no más que "high"',
    "something-else": "aquí se espera otra cosa",
  }
  return { wanted, found }
}
