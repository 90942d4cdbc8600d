import type { RecordedToner, ToneZoneName } from "../document/serviceRecord"
import type { Chair } from "./chair"

/** The toners of a service, each with when it went on and when it was rinsed off. */
export function tonerTimes({ toners = [], log }: Pick<Chair, "toners" | "log">): RecordedToner[] {
  const live = log.filter(({ undone }) => !undone)
  return toners.map((toner) => {
    const atOf = (kind: "toner-on" | "toner-off") =>
      live.find(({ tap }) => tap.kind === kind && tap.zone === toner.zone)?.atMs ?? null
    return { ...toner, onAtMs: atOf("toner-on"), offAtMs: atOf("toner-off") }
  })
}

/** The zones with toner on now: a service does not end over them, because their clocks would end with it. */
export const tonersOnNow = (chair: Pick<Chair, "toners" | "log">): ToneZoneName[] =>
  tonerTimes(chair).flatMap(({ zone, onAtMs, offAtMs }) =>
    onAtMs !== null && offAtMs === null ? [zone] : [],
  )

/** What the service does now: foils are on or to come, toner follows, or nothing is left to do. */
export type ServiceStage = "foils" | "toners" | "finished"

export function stageOf(chair: Pick<Chair, "toners" | "log">, isAllOff: boolean): ServiceStage {
  if (!isAllOff) return "foils"
  return tonerTimes(chair).some(({ offAtMs }) => offAtMs === null) ? "toners" : "finished"
}
