import { mapReach } from "../../../geometry/scalp/headSurface"
import type { SurfacePoint } from "../../../geometry/surface/frames"
import type { Limit } from "./limits"
import { z } from "./zod"

/** The leaves of the schema. Each refuses with the words "expected ...", to which the door adds where and what it found. */

export function number(limit: Limit) {
  const error = `expected ${limit.low} to ${limit.high} ${limit.unit}`.trimEnd()
  return z.number({ error }).check(z.minimum(limit.low, { error }), z.maximum(limit.high, { error }))
}

export function wholeNumber(limit: Limit) {
  const error = `expected a whole number from ${limit.low} to ${limit.high}`
  return z.int({ error }).check(z.minimum(limit.low, { error }), z.maximum(limit.high, { error }))
}

export function choice<const Words extends readonly [string, ...string[]]>(words: Words) {
  return z.enum(words, { error: `expected ${joinWords(words)}` })
}

const joinWords = (words: readonly string[]) =>
  words.length === 1
    ? `"${words[0]}"`
    : `${words
        .slice(0, -1)
        .map((word) => `"${word}"`)
        .join(", ")} or "${words.at(-1)}"`

const letterSplitter = new Intl.Segmenter()
/** Letters as a reader counts them: an accented letter or a joined emoji is one. */
const countLetters = (text: string) => [...letterSplitter.segment(text)].length

/** One line of words in any script. Nothing in it is ever interpreted. */
export function line(most: number) {
  const error = `expected one line of at most ${most} letters`
  return z.string({ error }).check(
    z.maxLength(most * 8, { error }),
    z.regex(/^[^\p{Cc}\p{Cs}\p{Zl}\p{Zp}]*$/u, { error: `${error}, without control characters` }),
    z.refine((text) => text.length <= most || countLetters(text) <= most, { error }),
  )
}

/** Several lines of words in any script. */
export function lines(most: number) {
  const error = `expected at most ${most} letters`
  return z
    .string({ error })
    .check(
      z.maxLength(most, { error }),
      z.regex(/^(?:\n|[^\p{Cc}\p{Cs}])*$/u, { error: `${error}, without control characters` }),
    )
}

const idError = "expected 1 to 64 letters, digits, hyphens or underscores"
export const id = z
  .string({ error: idError })
  .check(z.regex(/^[A-Za-z0-9][A-Za-z0-9_-]{0,63}$/, { error: idError }))

const mixError = 'expected one capital letter, such as "A"'
export const mixLetter = z.string({ error: mixError }).check(z.regex(/^[A-Z]$/, { error: mixError }))

export const day = z.iso.date({ error: 'expected a day written as "2026-03-09"' })

const pointError = "expected a point of the scalp map, two numbers of radians"
const coordinateError = `expected a number of radians from -${mapReach} to ${mapReach}`
const coordinate = z
  .number({ error: coordinateError })
  .check(z.minimum(-mapReach, { error: coordinateError }), z.maximum(mapReach, { error: coordinateError }))

/** The door is where a pair of numbers becomes a place on the scalp. */
export const point = z.readonly(
  z.tuple([coordinate, coordinate], { error: pointError }),
) as unknown as z.ZodMiniType<SurfacePoint>

/** A list whose length is looked at before anything in it, so that a list of thousands gives one problem. */
export function list<T>(
  element: z.ZodMiniType<T>,
  { low, high }: { low: number; high: number },
  what: string,
) {
  const error = `expected ${low ? `${low} to` : "at most"} ${high} ${what}`
  const sized = z
    .array(z.unknown(), { error })
    .check(z.minLength(low, { error }), z.maxLength(high, { error }))
  return z.readonly(z.pipe(sized, z.array(element).check(z.minLength(low), z.maxLength(high))))
}

/** A group of named fields and no others. */
export const group = <Shape extends z.core.$ZodShape>(shape: Shape) =>
  z.strictObject(shape, {
    error: ({ code }) =>
      code === "invalid_type" ? `expected a group of ${Object.keys(shape).join(", ")}` : undefined,
  })
