/** A number of the trade: its value, the span found or allowed, and where it is from. The unit is in the name it is kept under. */
export type Figure = { value: number; range: readonly [low: number, high: number]; source: string }

export const figure = (value: number, range: readonly [number, number], source: string): Figure => ({
  value,
  range,
  source,
})

export const commonPractice = "common practice, no source"
export const assumption = "assumption"
