import { isGroup } from "../checks/problem"
import { letters } from "../fields/limits"

/** A plan as a weighing may name it. */
export type NamedPlan = { id: string; name: string }

/** What stands for the name of a plan that was erased. */
const gap = "…"

/**
 * Weighings, wherever they stand in a value, without the plans they were made in: grams teach on, but nothing tells any
 * more whose they were. Whatever else the value holds stays.
 */
export function withoutPlans(value: unknown, plans: readonly NamedPlan[]): unknown {
  if (Array.isArray(value)) return value.map((each) => withoutPlans(each, plans))
  if (!isGroup(value)) return value
  if (typeof value.weighedAt === "string" && typeof value.name === "string") return unnamed(value, plans)
  return Object.fromEntries(Object.entries(value).map(([field, each]) => [field, withoutPlans(each, plans)]))
}

function unnamed(weighing: Record<PropertyKey, unknown>, plans: readonly NamedPlan[]) {
  const { planId, ...rest } = weighing
  const isOfOne = plans.some(({ id }) => id === planId)
  const name = plans.reduce((said, plan) => withoutName(said, plan.name.trim()), String(weighing.name))
  if (isOfOne) return { ...rest, name: name === weighing.name ? gap : name }
  return name === weighing.name ? weighing : { ...weighing, name }
}

/** A long name may have been cut off where the field ends. */
function withoutName(said: string, name: string): string {
  if (name === "") return said
  const whole = new RegExp(`(?<![\\p{L}\\p{N}])${escaped(name)}(?![\\p{L}\\p{N}])`, "gu")
  if (whole.test(said)) return said.replace(whole, gap)
  if ([...said].length < letters.name) return said
  for (let at = 0; at <= said.length - leastCut; at++)
    if (name.startsWith(said.slice(at))) return `${said.slice(0, at)}${gap}`
  return said
}

const escaped = (text: string) => text.replace(/[\\^$.*+?()[\]{}|/-]/g, "\\$&")

/** Fewer letters at the end of a field are no name. */
const leastCut = 3
