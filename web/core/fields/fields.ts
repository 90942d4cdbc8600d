import { mapReach } from "../../../geometry/scalp/headSurface"
import type { SurfacePoint } from "../../../geometry/surface/frames"
import { expected } from "./expected"
import type { Limit, ListedThing } from "./limits"
import { z } from "./zod"

/** The leaves of the schema. Each refuses with the code of what it expects, to which the door adds where and what it found. */

export function number(limit: Limit) {
  const error = expected({ code: "number", ...limit })
  return z.number({ error }).check(z.minimum(limit.low, { error }), z.maximum(limit.high, { error }))
}

export function wholeNumber(limit: Limit) {
  const error = expected({ code: "whole-number", low: limit.low, high: limit.high })
  return z.int({ error }).check(z.minimum(limit.low, { error }), z.maximum(limit.high, { error }))
}

export const choice = <const Choices extends readonly string[]>(choices: Choices) =>
  z.enum(choices, { error: expected({ code: "choice", choices }) })

const letterSplitter = new Intl.Segmenter()
/** Letters as a reader counts them: an accented letter or a joined emoji is one. */
const countLetters = (text: string) => [...letterSplitter.segment(text)].length

/** One line of words in any script. Nothing in it is ever interpreted. */
export function line(most: number) {
  const error = expected({ code: "line", most })
  const plain = expected({ code: "plain-line", most })
  return z.string({ error }).check(
    // Letters are costly to count, and a text this long has too many whatever they are: nothing else is asked of it.
    z.maxLength(most * 8, { error, abort: true }),
    z.regex(/^[^\p{Cc}\p{Cs}\p{Zl}\p{Zp}]*$/u, { error: plain }),
    z.refine((text) => text.length <= most || countLetters(text) <= most, { error }),
  )
}

/** Several lines of words in any script. */
export function lines(most: number) {
  const error = expected({ code: "lines", most })
  const plain = expected({ code: "plain-lines", most })
  return z
    .string({ error })
    .check(z.maxLength(most, { error, abort: true }), z.regex(/^(?:\n|[^\p{Cc}\p{Cs}])*$/u, { error: plain }))
}

const idError = expected({ code: "id" })
export const id = z
  .string({ error: idError })
  .check(z.regex(/^[A-Za-z0-9][A-Za-z0-9_-]{0,63}$/, { error: idError }))

const mixError = expected({ code: "mix-letter" })
export const mixLetter = z.string({ error: mixError }).check(z.regex(/^[A-Z]$/, { error: mixError }))

export const day = z.iso.date({ error: expected({ code: "day" }) })

const pointError = expected({ code: "point" })
const coordinateError = expected({ code: "coordinate", reach: mapReach })
const coordinate = z
  .number({ error: coordinateError })
  .check(z.minimum(-mapReach, { error: coordinateError }), z.maximum(mapReach, { error: coordinateError }))

/** The door is where a pair of numbers becomes a place on the scalp. */
export const point = z.readonly(
  z.tuple([coordinate, coordinate], { error: pointError }),
) as unknown as z.ZodMiniType<SurfacePoint>

const momentError = expected({ code: "moment" })
const momentForm = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d+)?)?(Z|[+-]\d{2}:\d{2})$/

/** A moment of the clock: ISO 8601 with its offset, on a day that there is. */
export const moment = z.string({ error: momentError }).check(
  z.maxLength(40, { error: momentError, abort: true }),
  z.refine((text) => momentForm.test(text) && !Number.isNaN(Date.parse(text)), { error: momentError }),
)

/** A list whose length is looked at before anything in it, so that a list of thousands gives one problem. */
export function list<T>(
  element: z.ZodMiniType<T>,
  { low, high }: { low: number; high: number },
  of: ListedThing,
) {
  const error = expected({ code: "list", low, high, of })
  const sized = z
    .array(z.unknown(), { error })
    .check(z.minLength(low, { error }), z.maxLength(high, { error }))
  return z.readonly(z.pipe(sized, z.array(element).check(z.minLength(low), z.maxLength(high))))
}

/** A group of named fields and no others. */
export const group = <Shape extends z.core.$ZodShape>(shape: Shape) =>
  z.strictObject(shape, {
    error: ({ code }) =>
      code === "invalid_type" ? expected({ code: "group", fields: Object.keys(shape) }) : undefined,
  })
