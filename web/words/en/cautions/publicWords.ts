import type { RuleName } from "../../../core/cautions/cautions"
import type { PublicStops } from "../../../core/cautions/publicStops"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { mixCautions } from "./mixCautions"
import { ruleNames } from "./ruleNames"

/** Stops as a sheet tells them that hangs where others read it. */
export function publicWords(t: Tools, named: (mix: string) => string) {
  const mixes = mixCautions(t, named)
  const head = ({ stops, isAsked, notKnown, day }: PublicStops) => {
    if (stops > 0)
      return t.count(stops, {
        one: "NOT CLEARED: # stop. Do not mix.",
        other: "NOT CLEARED: # stops. Do not mix.",
      })
    if (!isAsked) return "NOT CHECKED: no consultation recorded."
    if (notKnown > 0)
      return t.count(notKnown, {
        one: "NO STOP FOUND; # question not asked.",
        other: "NO STOP FOUND; # questions not asked.",
      })
    return `Checks done: no stop open on ${t.date(day)}.`
  }
  return {
    stops: (told: PublicStops) =>
      [
        head(told),
        ...told.mixes.map((why) => say(mixes, why)),
        ...told.tests.map((product) => `The patch test with ${product} is not cleared.`),
        ...told.passes.map(overridden),
      ]
        .join(" ")
        .replaceAll("\n", " "),
  }
}

/** A stop that tells an illness goes without its name. */
const overridden = ({ rule, by, reason }: { rule: RuleName | null; by: string; reason: string }) =>
  rule === null
    ? `A stop was overridden by ${by}: ${reason}`
    : `“${ruleNames[rule]}” overridden by ${by}: ${reason}`
