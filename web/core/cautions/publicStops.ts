import type { Pass } from "../document/consultation"
import type { Plan } from "../document/schema"
import type { Now } from "../text/zonedTime"
import type { RuleName } from "./cautions"
import { type Clearance, clearanceOf } from "./clearance"
import type { MixCode } from "./rules/cautionCode"

/**
 * Whether the plan is cleared, and what was overridden, for a sheet that hangs where others read it: of the client no
 * answer is told and of a test not what was seen, of the mix what is wrong with it.
 */
export type PublicStops = {
  state: Clearance["state"]
  /** The day by the wall calendar that it is true of, "YYYY-MM-DD". */
  day: string
  stops: number
  notAsked: number
  /** What is wrong with a mix. */
  mixes: readonly MixCode[]
  /** The products whose test is not cleared. */
  tests: readonly string[]
  passes: readonly PublicPass[]
}

/** A rule that tells of health goes without its name, and without the reason, which may tell it too. */
export type PublicPass = { by: string } & ({ rule: RuleName; reason: string } | { rule: null; reason: null })

export function publicStops(plan: Plan, now: Now): PublicStops {
  const { state, day, stops, notAsked, cautions } = clearanceOf(plan, now)
  const tests = stops.flatMap(({ why }) => (why.code === "alert-test-wanting" ? [why.fault.product] : []))
  return {
    state,
    day,
    stops: stops.length,
    notAsked: notAsked.length,
    mixes: stops.flatMap(({ why }) => ("mix" in why ? [why] : [])),
    tests: [...new Set(tests)],
    passes: once(
      cautions.flatMap(({ pass, rule, isPublic }) => (pass ? [passOf(pass, isPublic ? rule : null)] : [])),
    ),
  }
}

const passOf = ({ reason, by }: Pass, rule: RuleName | null): PublicPass =>
  rule === null ? { rule, reason: null, by } : { rule, reason, by }

const once = <T>(each: readonly T[]): T[] => [
  ...new Map(each.map((one) => [JSON.stringify(one), one])).values(),
]
