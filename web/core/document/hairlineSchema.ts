import { whorlTurns } from "../../../geometry/parting/wornParting"
import { hairlineForms, landmarkNames } from "../../../geometry/scalp/hairlineLandmarks"
import { expected } from "../fields/expected"
import { choice, group, list, number, point } from "../fields/fields"
import { counts, limits } from "../fields/limits"
import { z } from "../fields/zod"

/** The client's own hairline, the parting worn and the crown whorl, as they are written to a file. */

const move = group({
  landmark: choice(landmarkNames),
  /** Centre front and centre nape are the same for both. */
  side: choice(["left", "right", "both"]),
  towardNapeMm: number(limits.landmarkMm),
  behindMm: number(limits.landmarkMm),
})

export const hairlineSchema = group({
  form: choice(hairlineForms),
  /** How far landmarks are moved from where the form has them; see LandmarkMove. */
  moves: z.optional(list(move, counts.landmarkMoves, "moves")),
})

const kindError = expected({
  code: "kind",
  of: "parting-worn",
  kinds: ["centre", "side", "zigzag", "none"],
})

export const wornPartingSchema = z.discriminatedUnion(
  "kind",
  [
    group({ kind: z.literal("centre") }),
    group({
      kind: z.literal("side"),
      side: choice(["left", "right"]),
      offCentreMm: number(limits.offCentreMm),
    }),
    group({ kind: z.literal("zigzag") }),
    group({ kind: z.literal("none") }),
  ],
  { error: kindError },
)

export const whorlSchema = group({ at: point, turns: choice(whorlTurns) })

export type HairlinePlan = Readonly<z.infer<typeof hairlineSchema>>
export type LandmarkMoveRow = NonNullable<HairlinePlan["moves"]>[number]
