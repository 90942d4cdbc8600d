import { describe, expect, it } from "vitest"
import type { Chair, Tap } from "../../../../web/core/chair/chair"
import { startChair, tapChair } from "../../../../web/core/chair/chairClock"
import { mixings, standingOf } from "../../../../web/core/chair/chairRecord"

const minute = 60_000
const at = (minutes: number) => ({ load: "one", monotonicMs: minutes * minute, wallMs: minutes * minute })
const foils = [1, 2].map((mapNumber) => ({ id: `f${mapNumber}`, mapNumber, limitMin: 45, firstLookMin: 10 }))
const inLanes = foils.map((foil, i) => ({ ...foil, lane: i === 0 ? (1 as const) : (2 as const) }))
const play = (start: Chair, ...taps: readonly Tap[]) =>
  taps.reduce((chair, tap, i) => tapChair(chair, tap, { at: at(i), revision: chair.revision }).chair, start)
const seen = { level: 8, stretch: null, comfort: null, moist: null }
const deeds: readonly Tap[] = [
  { kind: "mixed" },
  { kind: "looked", foil: "f1", seen },
  { kind: "carried-on", foils: ["f1"] },
  { kind: "off", foil: "f1" },
  { kind: "rinsed" },
]
const whose = ({ log }: Chair) => log.map(({ tap }) => ("by" in tap ? tap.by : undefined))

describe("whose deed a tap was", () => {
  it("is kept of every deed where two work: of the lane it is in, else of who has the device in hand", () => {
    const placed = play(startChair(inLanes, at(0)), { kind: "on", foil: "f1", by: 1 })
    expect(whose(play(placed, ...deeds))).toEqual([1, 1, 1, 1, 1, 1])
    expect(whose(play({ ...placed, hand: 2 }, ...deeds))).toEqual([1, 2, 2, 2, 2, 2])
    const both = play(placed, { kind: "on", foil: "f2", by: 2 }, { kind: "mixed" })
    expect(whose(both)).toEqual([1, 2, 2])
  })
  it("is not known before anybody took the device, and is not asked where one works", () => {
    expect(whose(play(startChair(inLanes, at(0)), { kind: "mixed" }))).toEqual([undefined])
    const alone = play({ ...startChair(foils, at(0)), hand: 2 }, { kind: "on", foil: "f1" }, ...deeds)
    expect(whose(alone)).toEqual([undefined, undefined, undefined, undefined, undefined, undefined])
  })
  it("stays with the check and the bowl, also with one mixed afresh by another", () => {
    const chair = play(
      startChair(inLanes, at(0)),
      { kind: "on", foil: "f1", by: 1 },
      { kind: "mixed", bowl: 0 },
      { kind: "looked", foil: "f1", seen, by: 2 },
      { kind: "mixed", bowl: 0 },
    )
    expect(standingOf(chair).records.get("f1")?.looks).toEqual([{ atMs: 2 * minute, seen, by: 2 }])
    expect(mixings(chair.log)).toEqual([
      [
        { atMs: minute, by: 1 },
        { atMs: 3 * minute, by: 2 },
      ],
    ])
  })
})
