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
      return `Contrôler dès la minute ${first} ; ne devrait pas être prêt à temps ; temps max ${most} min.`
    if (high > neverPastMin)
      return `Contrôler dès la minute ${first} ; attendu dès la minute ${from}, peut-être pas à temps ; temps max ${most} min.`
    return `Contrôler dès la minute ${first} ; attendu de la minute ${from} à ${to} ; temps max ${most} min.`
  }

/** What is wrong with the rows of a strand test. */
export const strandFaults = (t: Tools) =>
  ({
    "no-rows": "Un test mèche demande au moins une ligne : les minutes et la hauteur vue.",
    "too-many-rows": ({ most }) => `Un test mèche a au plus ${most} lignes.`,
    "start-off-scale": ({ level, darkest, lightest }) =>
      `La hauteur de départ est ${t.number(level)} : l’échelle va de ${darkest} à ${lightest}.`,
    "row-off-scale": ({ row, level, darkest, lightest }) =>
      `Ligne ${row} : la hauteur ${t.number(level)} est hors de l’échelle, qui va de ${darkest} à ${lightest}.`,
    "out-of-order": ({ row, minutes, beforeMin }) =>
      `La ligne ${row} est à ${t.minutes(minutes, 2)}, pas après ${t.minutes(beforeMin, 2)}. Mettez les lignes dans l’ordre du temps.`,
    "past-longest": ({ row, minutes, longestMin }) =>
      `La ligne ${row} est à ${t.minutes(minutes, 2)}, au-delà du temps max du produit, ${t.minutes(longestMin, 2)}.`,
    darker: ({ row, level, beforeLevel }) =>
      `Ligne ${row} : la hauteur ${t.number(level)} est plus foncée que la hauteur ${t.number(beforeLevel)} du contrôle précédent. Des cheveux éclaircis ne foncent pas : vérifiez la saisie.`,
  }) satisfies Sentences<StrandFault>
