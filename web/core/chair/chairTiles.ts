import type { FoilRecord } from "./chairRecord"

type OnSince = Pick<FoilRecord, "onAtMs" | "limitMs">

/** Whole minutes that a foil has been on. */
export const minutesOn = ({ onAtMs }: Pick<OnSince, "onAtMs">, elapsedMs: number) =>
  onAtMs === null ? 0 : Math.floor((elapsedMs - onAtMs) / 60_000)

/** Whether a foil has been on for its longest time. */
export const isOver = ({ onAtMs, limitMs }: OnSince, elapsedMs: number) =>
  onAtMs !== null && elapsedMs - onAtMs >= limitMs
