import type { ClientWords } from "../../en/client/client"
import type { Tools } from "../../tools"

/** When to check, in whole minutes: earlier at the near end, later at the far end. */
export const lookWindow =
  (t: Tools): ClientWords["lookWindow"] =>
  ({ lookFromMin, expectedMin: { low, high }, neverPastMin }) => {
    const [from, to] = [t.whole(Math.floor(low)), t.whole(Math.ceil(high))]
    const [first, most] = [t.number(lookFromMin), t.number(neverPastMin)]
    if (low > neverPastMin)
      return `Kontrolle ab Minute ${first}; voraussichtlich nicht rechtzeitig fertig; Höchstzeit ${most} min.`
    if (high > neverPastMin)
      return `Kontrolle ab Minute ${first}; voraussichtlich fertig ab Minute ${from}, vielleicht nicht rechtzeitig; Höchstzeit ${most} min.`
    return `Kontrolle ab Minute ${first}; voraussichtlich fertig in Minute ${from} bis ${to}; Höchstzeit ${most} min.`
  }

/** What is wrong with the rows of a strand test. */
export const strandFaults = (t: Tools): ClientWords["strandFaults"] => ({
  "no-rows": "Eine Probesträhne braucht mindestens eine Zeile: Minuten und die gesehene Tonhöhe.",
  "too-many-rows": ({ most }) => `Eine Probesträhne hat höchstens ${most} Zeilen.`,
  "start-off-scale": ({ level, darkest, lightest }) =>
    `Die Anfangstonhöhe ist ${t.number(level)}: Die Skala reicht von ${darkest} bis ${lightest}.`,
  "row-off-scale": ({ row, level, darkest, lightest }) =>
    `Zeile ${row}: Tonhöhe ${t.number(level)} liegt nicht auf der Skala von ${darkest} bis ${lightest}.`,
  "out-of-order": ({ row, minutes, beforeMin }) =>
    `Zeile ${row} steht bei ${t.minutes(minutes, 2)}, nicht nach ${t.minutes(beforeMin, 2)}. Zeilen nach der Zeit ordnen.`,
  "past-longest": ({ row, minutes, longestMin }) =>
    `Zeile ${row} steht bei ${t.minutes(minutes, 2)}, über der Höchstzeit des Produkts von ${t.minutes(longestMin, 2)}.`,
  darker: ({ row, level, beforeLevel }) =>
    `Zeile ${row}: Tonhöhe ${t.number(level)} ist dunkler als Tonhöhe ${t.number(beforeLevel)} bei der Kontrolle davor. Aufgehelltes Haar dunkelt nicht nach: Eintrag prüfen.`,
})
