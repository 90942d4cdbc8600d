import type { Pass } from "../document/consultation"
import type { Plan } from "../document/schema"
import { dayIn, momentMs } from "../text/zonedTime"
import { type RuleName, rules } from "./cautions"
import type { Now } from "./rules/alertTest"
import type { MixCode } from "./rules/cautionCode"
import { checkPlan } from "./visitOfPlan"

/**
 * Whether the mix is held, and what was passed with a written reason, for a sheet that hangs where others read it: of
 * the client no answer is told and of a test not what was seen, of the mix what is wrong with it.
 */
export type PublicStops = {
  /** The day by the wall calendar that it is true of, "YYYY-MM-DD". */
  day: string
  stops: number
  notKnown: number
  isAsked: boolean
  /** What is wrong with a mix. */
  mixes: readonly MixCode[]
  /** The products whose test is not cleared. */
  tests: readonly string[]
  passes: readonly { rule: RuleName | null; reason: string; by: string }[]
}

export function publicStops(plan: Plan, now: Now): PublicStops {
  const { stops, cautions, notKnown } = checkPlan(plan, now)
  return {
    day: dayIn(now.zone, momentMs(now.moment) ?? 0),
    stops: stops.length,
    notKnown: notKnown.length,
    isAsked: plan.consultation !== undefined,
    mixes: stops.flatMap(({ why }) => ("mix" in why ? [why] : [])),
    tests: [
      ...new Set(stops.flatMap(({ why }) => (why.code === "alert-test-wanting" ? [why.fault.product] : []))),
    ],
    passes: once(cautions.flatMap(({ pass, rule }) => (pass ? [passOf(pass, rule)] : []))),
  }
}

/** What tells an illness goes without its name. */
const passOf = ({ reason, by }: Pass, rule: RuleName) => ({
  rule: rules.find((row) => row.rule === rule)?.isPublic ? rule : null,
  reason,
  by,
})

const once = <T>(each: readonly T[]): T[] => [
  ...new Map(each.map((one) => [JSON.stringify(one), one])).values(),
]
