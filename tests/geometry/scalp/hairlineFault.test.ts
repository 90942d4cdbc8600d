import { describe, expect, it } from "vitest"
import { hairlineFault } from "../../../geometry/scalp/hairlineFault"
import { hairlineForms, type LandmarkName } from "../../../geometry/scalp/hairlineLandmarks"
import { makeHeadFromAxes } from "../../../geometry/scalp/head"
import { randomMoves, withMoves } from "../../support/movedHeads"
import { randomHeads } from "../../support/randomHeads"

const head = makeHeadFromAxes([1.02, 0.97, 1.01], "round")
const fault = (
  name: LandmarkName,
  towardNapeMm: number,
  behindMm: number,
  side: "left" | "right" = "right",
) =>
  hairlineFault(
    withMoves(head, {
      left: new Map(),
      right: new Map(),
      [side]: new Map([[name, { towardNapeMm, behindMm }]]),
    }),
  )

describe("a hairline that can be", () => {
  it("is every form on every head", () => {
    for (const each of randomHeads(40)) expect(hairlineFault(each)).toBe(null)
    for (const form of hairlineForms) expect(hairlineFault(makeHeadFromAxes([1, 1, 1], form))).toBe(null)
  })
  it("is one moved by a few mm anywhere", () => {
    randomHeads(12).forEach((each, i) => {
      expect(hairlineFault(withMoves(each, randomMoves(3, 4 + i)))).toBe(null)
    })
  })
  it("may go back far at the temples, and low at the nape", () => {
    expect(fault("recession", 0, 35)).toBe(null)
    expect(fault("temple", 0, 18)).toBe(null)
    expect(fault("nape corner", 0, -12)).toBe(null)
    expect(fault("sideburn", 0, -22)).toBe(null)
    expect(fault("centre front", 0, -15)).toBe(null)
  })
})

describe("a hairline that cannot be", () => {
  it.each([
    ["dragged past its neighbour", "recession", 70, 0, "crosses-itself"],
    ["over the ear", "ear top", 0, -25, "over-ear"],
    ["over the ear from behind", "behind ear", 0, -22, "over-ear"],
    ["down to the nose", "centre front", 0, -60, "on-face"],
    ["onto the cheek", "temple", 0, -35, "on-face"],
  ] as const)("is one %s", (_, name, towardNapeMm, behindMm, expected) => {
    expect(fault(name, towardNapeMm, behindMm)).toEqual({ fault: expected, side: "right" })
    expect(fault(name, towardNapeMm, behindMm, "left")?.fault).toBe(expected)
  })
  it("is one off the scalp", () => {
    const down = new Map([["centre nape" as const, { towardNapeMm: 0, behindMm: -60 }]])
    expect(hairlineFault(withMoves(head, { left: down, right: down }))?.fault).toBe("off-scalp")
  })
})
