import type { Expected, Found } from "../../../core/fields/problem"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"
import { kinded, listed, units } from "./fields"

const quoted = (text: string) => `"${text}"`

/** What a field must hold and what stands there: the words of a file, told as they are written in it. */
export function fieldSentences(t: Tools) {
  const figure = (value: number) => t.number(value, 5)
  const span = (low: number, high: number) => `de ${figure(low)} à ${figure(high)}`
  const found = (what: Found): string => {
    switch (what.is) {
      case "missing":
        return "mais il n’y a rien"
      case "nothing":
        return "trouvé une valeur vide (null)"
      case "group":
        return "trouvé un groupe de champs"
      case "endless-number":
        return "trouvé un nombre sans fin"
      case "text":
        return `trouvé ${quoted(what.text)}`
      case "number":
        return `trouvé ${figure(what.value)}`
      case "truth":
        return `trouvé ${what.value}`
      case "list":
        return `trouvé une liste de ${t.whole(what.length)}`
    }
  }
  const wanted: Sentences<Expected> = {
    number: ({ low, high, unit }) => `attendu ${span(low, high)} ${units[unit]}`.trimEnd(),
    "whole-number": ({ low, high }) => `attendu un nombre entier ${span(low, high)}`,
    choice: ({ choices }) => `attendu ${t.or(choices.map(quoted))}`,
    "one-or-two": "attendu 1 ou 2",
    line: ({ most }) => `attendu une ligne de ${t.whole(most)} lettres au plus`,
    "plain-line": ({ most }) =>
      `attendu une ligne de ${t.whole(most)} lettres au plus, sans caractères de contrôle`,
    lines: ({ most }) => `attendu ${t.whole(most)} lettres au plus`,
    "plain-lines": ({ most }) => `attendu ${t.whole(most)} lettres au plus, sans caractères de contrôle`,
    id: "attendu de 1 à 64 lettres, chiffres, tirets ou tirets bas",
    "mix-letter": 'attendu une lettre majuscule, comme "A"',
    day: 'attendu un jour écrit comme "2026-03-09"',
    moment: 'attendu un jour et une heure écrits comme "2026-03-09T14:30:00Z"',
    point: "attendu un point de la carte du cuir chevelu, deux nombres de radians",
    coordinate: ({ reach }) => `attendu un nombre de radians ${span(-reach, reach)}`,
    list: ({ low, high, of }) =>
      low > 0
        ? `attendu de ${t.whole(low)} à ${t.whole(high)} ${listed[of]}`
        : `attendu ${t.whole(high)} ${listed[of]} au plus`,
    group: ({ fields }) => `attendu un groupe de ${fields.join(", ")}`,
    kind: ({ of, kinds }) => kinded[of](t.or(kinds.map(quoted))),
    "chair-note": "attendu une note du fauteuil",
    "true-or-left-out": "attendu true, ou pas de champ",
    "less-than-to": 'attendu moins que "to" (la racine est 0, les pointes sont 1)',
    "no-more-than-high": 'attendu pas plus que "high"',
    "something-else": "attendu autre chose ici",
  }
  return { wanted, found }
}
