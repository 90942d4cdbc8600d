import { describe, expect, it } from "vitest"
import { timeBetween } from "../../../../web/core/chair/chairTime"

const hour = 3_600_000
const at = (monotonicMs: number, wallMs: number, load = "first") => ({ load, monotonicMs, wallMs })

describe("time between two readings of the clocks", () => {
  it("is what both clocks say", () =>
    expect(timeBetween(at(500, 9_000_000), at(61_500, 9_061_000))).toEqual({ ms: 61_000, note: null }))
  it("is the monotonic clock's when the wall clock was set back", () => {
    const { ms, note } = timeBetween(at(0, 9 * hour), at(60_000, 7 * hour + 60_000))
    expect(ms).toBe(60_000)
    expect(note).toEqual({ code: "clock-set-back", byMs: 2 * hour })
  })
  it("is the longer when the device slept or its clock was set forward", () => {
    const { ms, note } = timeBetween(at(0, 0), at(1000, 600_000))
    expect(ms).toBe(600_000)
    expect(note).toEqual({ code: "slept-or-set-forward", byMs: 599_000 })
  })
  it("is the wall clock's over a reload, when the monotonic one began anew", () => {
    expect(timeBetween(at(700_000, 1_000_000), at(40, 1_030_000, "second"))).toEqual({
      ms: 30_000,
      note: null,
    })
    expect(timeBetween(at(700_000, 1_000_000), at(40, 1_030_000)).ms).toBe(30_000)
  })
  it("is unknown when the clock was set back over a reload, and says what to do", () => {
    const { ms, note } = timeBetween(at(0, 9 * hour), at(40, 7 * hour, "second"))
    expect(ms).toBe(0)
    expect(note).toEqual({ code: "set-back-while-closed", byMs: 2 * hour })
  })
})
