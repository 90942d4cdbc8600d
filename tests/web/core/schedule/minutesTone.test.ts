import { describe, expect, it } from "vitest"
import type { FoilAt } from "../../../../web/core/schedule/foilsAt"
import { minuteOf } from "../../../../web/core/schedule/minuteCode"
import { minutesTone } from "../../../../web/core/schedule/minutesTone"
import { en } from "../../../support/words"

const foil = (state: FoilAt["state"], onMin = 0, limitShare = 0): FoilAt => ({ state, onMin, limitShare })

describe("the shade of a foil at a minute", () => {
  it("grows with the minutes on to black at the longest time, and no further", () => {
    const shares = [0, 0.5, 1, 1.2].map((share) => minutesTone(foil("on", 9, share)).inkShare)
    expect(shares[0]).toBeGreaterThan(0) // on is never drawn like off
    expect(shares[1]).toBeGreaterThan(shares[0])
    expect(shares.slice(2)).toEqual([1, 1])
  })
  it("is dotted before it is on, and a plain outline once it is off", () => {
    expect(minutesTone(undefined)).toEqual(minutesTone(foil("waiting")))
    expect(minutesTone(foil("waiting")).dashPx).not.toEqual([])
    expect(minutesTone(foil("off", 26, 0.6))).toMatchObject({ inkShare: 0, dashPx: [] })
  })
})

it("tells the head at a minute, and each foil, in words", () => {
  const foils = new Map([
    ["a", foil("on", 12.4, 0.3)],
    ["b", foil("waiting")],
    ["c", foil("off", 26, 0.6)],
  ])
  expect(en.common.minute(minuteOf(24, foils))).toBe(
    "Minute 24: 1 foil on, the longest for 12 min, 1 to come, 1 off",
  )
  const { minutes } = en.placement.foot
  expect([...foils.values()].map((each, i) => minutes.foil({ number: i + 1, ...each }))).toEqual([
    "Foil 1: on for 12 min",
    "Foil 2: not on yet",
    "Foil 3: off, after 26 min",
  ])
})
