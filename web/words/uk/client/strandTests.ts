import type { LookWindow, StrandFault } from "../../../core/lift/strandTest"
import type { ClientWords } from "../../en/client/client"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"

/** When to check, in whole minutes: earlier at the near end, later at the far end. */
export const lookWindow =
  (t: Tools) =>
  ({ lookFromMin, expectedMin: { low, high }, neverPastMin }: LookWindow) => {
    const [from, to] = [t.whole(Math.floor(low)), t.whole(Math.ceil(high))]
    const [first, most] = [t.number(lookFromMin), t.number(neverPastMin)]
    if (low > neverPastMin)
      return `Перевіряти з хвилини ${first}; вчасна готовність не очікується; макс. час ${most}\u00a0хв.`
    if (high > neverPastMin)
      return `Перевіряти з хвилини ${first}; готовність очікується з хвилини ${from}, можливо, не вчасно; макс. час ${most}\u00a0хв.`
    return `Перевіряти з хвилини ${first}; готовність очікується між хвилинами ${from} і ${to}; макс. час ${most}\u00a0хв.`
  }

/** What is wrong with the rows of a strand test. */
export const strandFaults = (t: Tools): Sentences<StrandFault> & ClientWords["strandFaults"] => ({
  "no-rows": "Для тесту на пасмі потрібен хоча б один рядок: хвилини та побачений рівень.",
  "too-many-rows": ({ most }) => `У тесті на пасмі рядків не більше ніж ${most}.`,
  "start-off-scale": ({ level, darkest, lightest }) =>
    `Початковий рівень — ${t.number(level)}: шкала від ${darkest} до ${lightest}.`,
  "row-off-scale": ({ row, level, darkest, lightest }) =>
    `Рядок ${row}: рівень ${t.number(level)} поза шкалою від ${darkest} до ${lightest}.`,
  "out-of-order": ({ row, minutes, beforeMin }) =>
    `Рядок ${row}: ${t.minutes(minutes, 2)} — не пізніше за ${t.minutes(beforeMin, 2)}. Розташуйте рядки за часом.`,
  "past-longest": ({ row, minutes, longestMin }) =>
    `Рядок ${row}: ${t.minutes(minutes, 2)} — понад макс. час засобу, ${t.minutes(longestMin, 2)}.`,
  darker: ({ row, level, beforeLevel }) =>
    `Рядок ${row}: рівень ${t.number(level)} темніший за рівень ${t.number(beforeLevel)} попередньої перевірки. Освітлене волосся не темнішає: перевірте запис.`,
})
