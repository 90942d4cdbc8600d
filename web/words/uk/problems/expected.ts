import type { Expected, Found } from "../../../core/fields/problem"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"
import { kinded, listed, units } from "./fields"

const quoted = (text: string) => `"${text}"`

/** What a field must hold and what stands there: the words of a file, told as they are written in it. */
export function fieldSentences(t: Tools) {
  const figure = (value: number) => t.number(value, 5)
  const span = (low: number, high: number) => `від ${figure(low)} до ${figure(high)}`
  const found = (what: Found): string => {
    switch (what.is) {
      case "missing":
        return "але цього немає"
      case "nothing":
        return "є порожнє значення (null)"
      case "group":
        return "є група полів"
      case "endless-number":
        return "є число без кінця"
      case "text":
        return `є ${quoted(what.text)}`
      case "number":
        return `є ${figure(what.value)}`
      case "truth":
        return `є ${what.value}`
      case "list":
        return `є список із ${t.whole(what.length)}`
    }
  }
  const wanted: Sentences<Expected> = {
    number: ({ low, high, unit }) => `очікується ${span(low, high)} ${units[unit]}`.trimEnd(),
    "whole-number": ({ low, high }) => `очікується ціле число ${span(low, high)}`,
    choice: ({ choices }) => `очікується ${t.or(choices.map(quoted))}`,
    "one-or-two": "очікується 1 або 2",
    line: ({ most }) => `очікується один рядок, знаків не більше ніж ${t.whole(most)}`,
    "plain-line": ({ most }) =>
      `очікується один рядок, знаків не більше ніж ${t.whole(most)}, без керувальних знаків`,
    lines: ({ most }) => `очікується знаків не більше ніж ${t.whole(most)}`,
    "plain-lines": ({ most }) => `очікується знаків не більше ніж ${t.whole(most)}, без керувальних знаків`,
    id: "очікується від 1 до 64 літер, цифр, дефісів або підкреслень",
    "mix-letter": 'очікується одна велика літера, наприклад "A"',
    day: 'очікується день у записі "2026-03-09"',
    moment: 'очікується день і час у записі "2026-03-09T14:30:00Z"',
    point: "очікується точка схеми голови, два числа в радіанах",
    coordinate: ({ reach }) => `очікується число радіанів ${span(-reach, reach)}`,
    list: ({ low, high, of }) =>
      low > 0
        ? `очікується список (${listed[of]}) від ${t.whole(low)} до ${t.whole(high)}`
        : `очікується список (${listed[of]}) не більше ніж із ${t.whole(high)}`,
    group: ({ fields }) => `очікується група з ${fields.join(", ")}`,
    kind: ({ of, kinds }) => kinded[of](t.or(kinds.map(quoted))),
    "chair-note": "очікується нотатка біля крісла",
    "true-or-left-out": "очікується true або відсутність поля",
    "less-than-to": 'очікується менше за "to" (корінь — 0, кінці — 1)',
    "no-more-than-high": 'очікується не більше за "high"',
    "something-else": "тут очікується щось інше",
  }
  return { wanted, found }
}
