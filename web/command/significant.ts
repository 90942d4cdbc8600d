/** The object as JSON, its numbers with at most six significant digits. */
export const toJson = (object: object): string => JSON.stringify(object, (_, value) => significant(value), 2)

const significant = (value: unknown): unknown =>
  typeof value === "number" ? Number(value.toPrecision(6)) : value
