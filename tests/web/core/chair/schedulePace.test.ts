import { describe, expect, it } from "vitest"
import type { Tap } from "../../../../web/core/chair/chair"
import { startChair, tapChair } from "../../../../web/core/chair/chairClock"
import { learnPace, timedFoils, usualPace } from "../../../../web/core/chair/schedulePace"

describe("pace", () => {
  it("starts from common practice: a backcomb takes half a minute to a minute more", () => {
    expect(usualPace("usual", "slice")).toEqual({ low: 1.5, mid: 2, high: 2.5 })
    expect(usualPace("expert", "backcomb")).toEqual({ low: 1.5, mid: 2, high: 2.5 })
  })
  it("is learnt: the start weighs as six foils", () => {
    // (6 x 2 + 18 x 3) / 24 = 2.75; the spread of 25 % either way narrows by sqrt(6/24), to 12.5 %.
    const learnt = learnPace({ low: 1.5, mid: 2, high: 2.5 }, Array(18).fill(3))
    expect(learnt.mid).toBeCloseTo(2.75, 12)
    expect(learnt.low).toBeCloseTo(2.75 * 0.875, 12)
    expect(learnt.high).toBeCloseTo(2.75 * 1.125, 12)
    expect(learnPace({ low: 1, mid: 2, high: 3 }, [])).toEqual({ low: 1, mid: 2, high: 3 })
  })
  it("is timed from one foil on to the next, where no bowl was mixed between", () => {
    const foils = ["a", "b", "c", "d"].map((id) => ({ id, mapNumber: 1, limitMin: 45, firstLookMin: 10 }))
    const at = (minutes: number) => ({ load: "one", monotonicMs: minutes * 60_000, wallMs: minutes * 60_000 })
    const on = (foil: string): Tap => ({ kind: "on", foil })
    const taps: [number, Tap][] = [
      [0, on("a")],
      [2, on("b")],
      [5, { kind: "mixed" }],
      [6, on("c")],
      [7.5, on("d")],
    ]
    const chair = taps.reduce(
      (now, [minutes, tap]) => tapChair(now, tap, { at: at(minutes), revision: now.revision }).chair,
      startChair(foils, at(0)),
    )
    expect(timedFoils(chair)).toEqual([
      { foil: "a", minutes: 2, by: 1 },
      { foil: "c", minutes: 1.5, by: 1 },
    ])
  })
})
