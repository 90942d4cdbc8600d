import type { Expected, Found } from "../../../core/fields/problem"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"
import { kinded, listed, units } from "./fields"

const quoted = (text: string) => `"${text}"`

/** What a field must hold and what stands there: the words of a file, told as they are written in it. */
export function fieldSentences(t: Tools) {
  const figure = (value: number) => t.number(value, 5)
  const [things, kindedThings] = [t.spelled(listed), t.spelled(kinded)]
  const span = (low: number, high: number) => `${figure(low)} to ${figure(high)}`
  const found = (what: Found): string => {
    switch (what.is) {
      case "missing":
        return "but it is missing"
      case "nothing":
        return "found nothing (null)"
      case "group":
        return "found a group of fields"
      case "endless-number":
        return "found a number without end"
      case "text":
        return `found ${quoted(what.text)}`
      case "number":
        return `found ${figure(what.value)}`
      case "truth":
        return `found ${what.value}`
      case "list":
        return `found a list of ${t.whole(what.length)}`
    }
  }
  const wanted: Sentences<Expected> = {
    number: ({ low, high, unit }) => `expected ${span(low, high)} ${units[unit]}`.trimEnd(),
    "whole-number": ({ low, high }) => `expected a whole number from ${span(low, high)}`,
    choice: ({ choices }) => `expected ${t.or(choices.map(quoted))}`,
    "one-or-two": "expected 1 or 2",
    line: ({ most }) => `expected one line of at most ${t.whole(most)} letters`,
    "plain-line": ({ most }) =>
      `expected one line of at most ${t.whole(most)} letters, without control characters`,
    lines: ({ most }) => `expected at most ${t.whole(most)} letters`,
    "plain-lines": ({ most }) => `expected at most ${t.whole(most)} letters, without control characters`,
    id: "expected 1 to 64 letters, digits, hyphens or underscores",
    "mix-letter": 'expected one capital letter, such as "A"',
    day: 'expected a day written as "2026-03-09"',
    moment: 'expected a day and time written as "2026-03-09T14:30:00Z"',
    point: "expected a point of the scalp map, two numbers of radians",
    coordinate: ({ reach }) => `expected a number of radians from ${span(-reach, reach)}`,
    list: ({ low, high, of }) =>
      low > 0
        ? `expected ${t.whole(low)} to ${t.whole(high)} ${things[of]}`
        : `expected at most ${t.whole(high)} ${things[of]}`,
    group: ({ fields }) => `expected a group of ${fields.join(", ")}`,
    kind: ({ of, kinds }) => `${kindedThings[of]} ${t.or(kinds.map(quoted))}`,
    "chair-note": "expected a note of the chair",
    "true-or-left-out": "expected true, or the field left out",
    "less-than-to": 'expected less than "to" (the root is 0, the ends are 1)',
    "no-more-than-high": 'expected no more than "high"',
    "something-else": "expected something else here",
  }
  return { wanted, found }
}
