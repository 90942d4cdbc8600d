/** The object as JSON, its numbers with at most six significant digits. */
export const toJson = (object: object): string => JSON.stringify(object, (_, value) => significant(value), 2)

/** What is left of a sum that comes to nothing is written as nothing. */
const leastShown = 1e-9

const significant = (value: unknown): unknown => {
  if (typeof value !== "number") return value
  return Math.abs(value) < leastShown ? 0 : Number(value.toPrecision(6))
}
