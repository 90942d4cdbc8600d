import type { ToneZoneName } from "../document/serviceRecord"
import type { DueCall } from "./dueCalls"

/** What a call says. Foils are their numbers on the map, a bowl counts from 1; "in" is still to come, "by" is over, both milliseconds. */
export type CallCode =
  | { code: "bowl-ahead"; bowl: number; mix: string; inMs: number }
  | { code: "bowl-past"; bowl: number; mix: string; byMs: number }
  | { code: "heat-ahead"; inMs: number }
  | { code: "heat-past"; byMs: number }
  | { code: "take-off"; foils: readonly number[] }
  | { code: "at-goal"; foils: readonly number[] }
  | { code: "planned-ahead"; foils: readonly number[]; inMs: number }
  | { code: "planned-off"; foils: readonly number[]; byMs: number }
  | { code: "limit-ahead"; foils: readonly number[]; inMs: number }
  | { code: "limit-past"; foils: readonly number[]; byMs: number }
  | { code: "check-ahead"; foils: readonly number[]; inMs: number }
  | { code: "check-now"; foils: readonly number[] }
  | { code: "check-late"; foils: readonly number[]; byMs: number }
  | { code: "toner-ahead"; zone: ToneZoneName; inMs: number }
  | { code: "toner-off"; zone: ToneZoneName; byMs: number }
  | { code: "toner-limit-ahead"; zone: ToneZoneName; inMs: number }
  | { code: "toner-limit"; zone: ToneZoneName; byMs: number }

/** A call as it is said. */
export function callCode(call: DueCall): CallCode {
  const { kind, stage, foils, inMs, bowl } = call
  const isAhead = stage === "ahead"
  const byMs = -inMs
  if (call.zone) return tonerCode(call, call.zone)
  if (bowl) {
    const which = { bowl: bowl.at + 1, mix: bowl.mix }
    return isAhead ? { code: "bowl-ahead", ...which, inMs } : { code: "bowl-past", ...which, byMs }
  }
  if (kind === "heat-off") return isAhead ? { code: "heat-ahead", inMs } : { code: "heat-past", byMs }
  if (kind === "take-off" || kind === "at-goal") return { code: kind, foils }
  if (kind === "planned-off")
    return isAhead ? { code: "planned-ahead", foils, inMs } : { code: "planned-off", foils, byMs }
  if (kind === "limit")
    return isAhead ? { code: "limit-ahead", foils, inMs } : { code: "limit-past", foils, byMs }
  if (isAhead) return { code: "check-ahead", foils, inMs }
  return stage === "now" ? { code: "check-now", foils } : { code: "check-late", foils, byMs }
}

function tonerCode({ kind, stage, inMs }: DueCall, zone: ToneZoneName): CallCode {
  if (kind === "toner-limit")
    return stage === "ahead"
      ? { code: "toner-limit-ahead", zone, inMs }
      : { code: "toner-limit", zone, byMs: -inMs }
  return stage === "ahead" ? { code: "toner-ahead", zone, inMs } : { code: "toner-off", zone, byMs: -inMs }
}
