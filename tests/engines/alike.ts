const number = /\d+(?:[.,]\d+)*/g

/**
 * Whether two texts say the same, with numbers that differ by one in the last figure at most. A driver moves a pointer by
 * whole pixels in a pane whose edge may lie half a pixel elsewhere, so a parting by hand ends up to a pixel further on.
 */
export function alike(one: string, other: string): boolean {
  if (one.replace(number, "#") !== other.replace(number, "#")) return false
  const others = other.match(number) ?? []
  return (one.match(number) ?? []).every((text, i) => isClose(text, others[i]))
}

function isClose(one: string, other: string): boolean {
  const [a, b] = [one, other].map((text) => Number(text.replace(/,/g, "")))
  const decimals = one.split(".")[1]?.length ?? 0
  // A count of hairs or an area of several hundred is not said to its last figure.
  return Math.abs(a - b) <= Math.max(1.01 * 10 ** -decimals, 0.02 * a)
}
