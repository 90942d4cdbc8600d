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
      return `Check from minute ${first}; not expected to be ready in time; max time ${most} min.`
    if (high > neverPastMin)
      return `Check from minute ${first}; expected ready from minute ${from}, perhaps not in time; max time ${most} min.`
    return `Check from minute ${first}; expected ready at minute ${from} to ${to}; max time ${most} min.`
  }

/** What is wrong with the rows of a strand test. */
export const strandFaults = (t: Tools) =>
  ({
    "no-rows": "A strand test needs at least one row: minutes and the level seen.",
    "too-many-rows": ({ most }) => `A strand test has at most ${most} rows.`,
    "start-off-scale": ({ level, darkest, lightest }) =>
      `The starting level is ${t.number(level)}: the scale runs from ${darkest} to ${lightest}.`,
    "row-off-scale": ({ row, level, darkest, lightest }) =>
      `Row ${row}: level ${t.number(level)} is off the scale, which runs from ${darkest} to ${lightest}.`,
    "out-of-order": ({ row, minutes, beforeMin }) =>
      `Row ${row} is at ${t.minutes(minutes, 2)}, not after ${t.minutes(beforeMin, 2)}. Put the rows in order of time.`,
    "past-longest": ({ row, minutes, longestMin }) =>
      `Row ${row} is at ${t.minutes(minutes, 2)}, past the product’s max time of ${t.minutes(longestMin, 2)}.`,
    darker: ({ row, level, beforeLevel }) =>
      `Row ${row}: level ${t.number(level)} is darker than level ${t.number(beforeLevel)} at the check before. Lifted hair does not darken: check the entry.`,
  }) satisfies Sentences<StrandFault>
