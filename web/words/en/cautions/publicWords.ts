import type { PublicPass, PublicStops } from "../../../core/cautions/publicStops"
import { fullStop } from "../../fullStop"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { mixCautions } from "./mixCautions"
import type { ruleNames } from "./ruleNames"

/** Stops as a sheet tells them that hangs where others read it. */
export function publicWords(t: Tools, named: (mix: string) => string, rules: typeof ruleNames) {
  const mixes = mixCautions(t, named)
  /** In type as large as the numbers of the foils. */
  const head = ({ state, day }: PublicStops) =>
    state === "stop"
      ? "NOT CLEARED: DO NOT MIX"
      : state === "not-asked"
        ? "NOT CLEARED: health not asked"
        : `Checks done: no stop open on ${t.date(day)}`
  const detail = ({ state, stops, notAsked }: PublicStops) => {
    if (state === "stop") return [t.count(stops, { one: "# stop is open.", other: "# stops are open." })]
    if (state === "not-asked")
      return [
        t.count(notAsked, { one: "# thing has not been asked.", other: "# things have not been asked." }),
      ]
    return []
  }
  return {
    head,
    /** What follows the head. */
    detail: (told: PublicStops) =>
      [
        ...detail(told),
        ...told.mixes.map((why) => say(mixes, why)),
        ...told.tests.map((product) => `The patch test with ${product} is not cleared.`),
        ...told.passes.map(overridden(rules)),
      ]
        .join(" ")
        .replaceAll("\n", " "),
    /** Both in one line. */
    stops: (told: PublicStops): string =>
      [`${head(told)}.`, publicWords(t, named, rules).detail(told)].filter((part) => part !== "").join(" "),
  }
}

/** A stop that tells an illness goes without its name and its reason. */
const overridden =
  (rules: typeof ruleNames) =>
  ({ rule, by, reason }: PublicPass) =>
    rule === null
      ? fullStop(`A stop was overridden by ${by}`)
      : `“${rules[rule]}” overridden by ${by}: ${reason}`
