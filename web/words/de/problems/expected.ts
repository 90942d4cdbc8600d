import type { Expected, Found } from "../../../core/fields/problem"
import type { fieldSentences as english } from "../../en/problems/expected"
import type { Sentences } from "../../say"
import { kinded, listed, units } from "./fields"

const quoted = (text: string) => `„${text}“`

/** What a field must hold and what stands there: the words of a file, told as they are written in it. */
export const fieldSentences: typeof english = (t) => {
  const figure = (value: number) => t.number(value, 5)
  const span = (low: number, high: number) => `${figure(low)} bis ${figure(high)}`
  const found = (what: Found): string => {
    switch (what.is) {
      case "missing":
        return "aber es fehlt"
      case "nothing":
        return "gefunden nichts (null)"
      case "group":
        return "gefunden eine Gruppe von Feldern"
      case "endless-number":
        return "gefunden eine Zahl ohne Ende"
      case "text":
        return `gefunden ${quoted(what.text)}`
      case "number":
        return `gefunden ${figure(what.value)}`
      case "truth":
        return `gefunden ${what.value}`
      case "list":
        return `gefunden eine Liste mit ${t.whole(what.length)}`
    }
  }
  const wanted: Sentences<Expected> = {
    number: ({ low, high, unit }) => `erwartet ${span(low, high)} ${units[unit]}`.trimEnd(),
    "whole-number": ({ low, high }) => `erwartet eine ganze Zahl von ${span(low, high)}`,
    choice: ({ choices }) => `erwartet ${t.or(choices.map(quoted))}`,
    "one-or-two": "erwartet 1 oder 2",
    line: ({ most }) => `erwartet eine Zeile mit höchstens ${t.whole(most)} Zeichen`,
    "plain-line": ({ most }) =>
      `erwartet eine Zeile mit höchstens ${t.whole(most)} Zeichen, ohne Steuerzeichen`,
    lines: ({ most }) => `erwartet höchstens ${t.whole(most)} Zeichen`,
    "plain-lines": ({ most }) => `erwartet höchstens ${t.whole(most)} Zeichen, ohne Steuerzeichen`,
    id: "erwartet 1 bis 64 Buchstaben, Ziffern, Binde- oder Unterstriche",
    "mix-letter": "erwartet ein Großbuchstabe, etwa „A“",
    day: "erwartet ein Tag, geschrieben als „2026-03-09“",
    moment: "erwartet Tag und Uhrzeit, geschrieben als „2026-03-09T14:30:00Z“",
    point: "erwartet ein Punkt der Kopfhautkarte, zwei Zahlen in Radiant",
    coordinate: ({ reach }) => `erwartet eine Zahl in Radiant von ${span(-reach, reach)}`,
    list: ({ low, high, of }) =>
      low > 0
        ? `erwartet ${t.whole(low)} bis ${t.whole(high)} ${listed[of]}`
        : `erwartet höchstens ${t.whole(high)} ${listed[of]}`,
    group: ({ fields }) => `erwartet eine Gruppe aus ${fields.join(", ")}`,
    kind: ({ of, kinds }) => `${kinded[of]} ${t.or(kinds.map(quoted))}`,
    "chair-note": "erwartet ein Hinweis vom Stuhl",
    "true-or-left-out": "erwartet true oder kein Feld",
    "less-than-to": "erwartet weniger als „to“ (der Ansatz ist 0, die Spitzen sind 1)",
    "no-more-than-high": "erwartet nicht mehr als „high“",
    "something-else": "erwartet hier etwas anderes",
  }
  return { wanted, found }
}
