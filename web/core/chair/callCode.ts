import type { ToneZoneName } from "../document/serviceRecord"
import type { Piece } from "../kinds/kindRecord"
import type { DueCall } from "./dueCalls"

/** What a call says. Foils are their numbers on the map, a bowl counts from 1; "in" is still to come, "by" is over, both milliseconds. */
export type CallCode =
  | { code: "bowl-ahead"; bowl: number; mix: string; inMs: number }
  | { code: "bowl-past"; bowl: number; mix: string; byMs: number }
  | { code: "heat-ahead"; inMs: number }
  | { code: "heat-past"; byMs: number }
  | { code: "take-off"; foils: readonly number[]; piece?: Piece }
  | { code: "at-goal"; foils: readonly number[]; piece?: Piece }
  | { code: "planned-ahead"; foils: readonly number[]; piece?: Piece; inMs: number }
  | { code: "planned-off"; foils: readonly number[]; piece?: Piece; byMs: number }
  | { code: "limit-ahead"; foils: readonly number[]; piece?: Piece; inMs: number }
  | { code: "limit-past"; foils: readonly number[]; piece?: Piece; byMs: number }
  | { code: "roots-ahead"; foils: readonly number[]; piece?: Piece; mix: string; inMs: number }
  | { code: "roots-now"; foils: readonly number[]; piece?: Piece; mix: string; byMs: number }
  | { code: "check-ahead"; foils: readonly number[]; piece?: Piece; inMs: number }
  | { code: "check-now"; foils: readonly number[]; piece?: Piece }
  | { code: "check-late"; foils: readonly number[]; piece?: Piece; byMs: number }
  | { code: "toner-ahead"; zone: ToneZoneName; inMs: number }
  | { code: "toner-off"; zone: ToneZoneName; byMs: number }
  | { code: "toner-limit-ahead"; zone: ToneZoneName; inMs: number }
  | { code: "toner-limit"; zone: ToneZoneName; byMs: number }

/** A call as it is said. */
export function callCode(call: DueCall): CallCode {
  const { kind, stage, inMs, bowl } = call
  const which = { foils: call.foils, ...(call.piece && { piece: call.piece }) }
  const isAhead = stage === "ahead"
  const byMs = -inMs
  if (call.zone) return tonerCode(call, call.zone)
  if (bowl) {
    const one = { bowl: bowl.at + 1, mix: bowl.mix }
    return isAhead ? { code: "bowl-ahead", ...one, inMs } : { code: "bowl-past", ...one, byMs }
  }
  if (kind === "heat-off") return isAhead ? { code: "heat-ahead", inMs } : { code: "heat-past", byMs }
  if (kind === "take-off" || kind === "at-goal") return { code: kind, ...which }
  if (kind === "planned-off")
    return isAhead ? { code: "planned-ahead", ...which, inMs } : { code: "planned-off", ...which, byMs }
  if (kind === "limit")
    return isAhead ? { code: "limit-ahead", ...which, inMs } : { code: "limit-past", ...which, byMs }
  if (kind === "roots") {
    const { mix = "" } = call
    return isAhead ? { code: "roots-ahead", ...which, mix, inMs } : { code: "roots-now", ...which, mix, byMs }
  }
  if (isAhead) return { code: "check-ahead", ...which, inMs }
  return stage === "now" ? { code: "check-now", ...which } : { code: "check-late", ...which, byMs }
}

function tonerCode({ kind, stage, inMs }: DueCall, zone: ToneZoneName): CallCode {
  if (kind === "toner-limit")
    return stage === "ahead"
      ? { code: "toner-limit-ahead", zone, inMs }
      : { code: "toner-limit", zone, byMs: -inMs }
  return stage === "ahead" ? { code: "toner-ahead", zone, inMs } : { code: "toner-off", zone, byMs: -inMs }
}
