/** 0 below `from`, 1 above `to`, and between them a curve that is level at both ends; `from` may be the larger. */
export function smoothStep(from: number, to: number, value: number): number {
  const share = Math.min(1, Math.max(0, (value - from) / (to - from)))
  return share * share * (3 - 2 * share)
}
