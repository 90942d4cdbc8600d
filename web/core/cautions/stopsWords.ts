import type { Plan } from "../document/schema"
import type { Now } from "./rules/alertTest"
import { mixRules } from "./rules/mixRules"
import { checkPlan } from "./visitOfPlan"

/**
 * Whether the mix is held, and what was passed with a written reason, for a sheet that hangs where others read it: of
 * the client no answer is told and of a test not what was seen, of the mix what is wrong with it.
 */
export function stopsWords(plan: Plan, now: Now): string {
  const { stops, cautions, notKnown } = checkPlan(plan, now)
  const passes = new Set(
    cautions.flatMap(({ pass }) => (pass ? [`Passed by ${pass.by}: ${pass.reason}`] : [])),
  )
  const ofMixes = stops.filter(({ rule }) => mixRules.some((row) => row.rule === rule)).map(({ why }) => why)
  const ofTests = stops
    .filter(({ rule }) => rule === "alert-test")
    .map(({ about }) => `The alert test with ${about} is not cleared.`)
  return [heldWords(stops.length, notKnown.length, plan), ...ofMixes, ...new Set(ofTests), ...passes]
    .join(" ")
    .replaceAll("\n", " ")
}

function heldWords(stops: number, notKnown: number, { consultation }: Plan): string {
  if (stops > 0) return `NOT CLEARED: ${stops === 1 ? "a stop holds" : `${stops} stops hold`} the mix.`
  if (!consultation) return "Stops: nothing has been asked yet."
  return notKnown > 0 ? `Stops: none open; ${notKnown} things are not known.` : "Stops: cleared."
}
