import { describe, expect, it } from "vitest"
import { hairlineForms } from "../../../../../geometry/scalp/hairlineLandmarks"
import { hairlinePicture } from "../../../../../web/panels/client/measures/hairlinePicture"

/** The first line of the hair is the hairline; its points as x, y of the picture, y down. */
const lineOf = (form: (typeof hairlineForms)[number]) =>
  hairlinePicture(form)
    .hair.split("M")[1]
    .split("L")
    .map((point) => point.split(" ").map(Number))

describe("the picture of a hairline", () => {
  it("is the same on both sides", () => {
    for (const form of hairlineForms) {
      const line = lineOf(form)
      const mirrored = line.map(([x, y]) => [x === 0 ? 0 : -x, y]).reverse()
      expect(mirrored).toEqual(line.map(([x, y]) => [x === 0 ? 0 : x, y]))
    }
  })
  it("differs from form to form", () => {
    expect(new Set(hairlineForms.map((form) => hairlinePicture(form).hair)).size).toBe(hairlineForms.length)
  })
  it("grows hair away from the face: strokes beside the middle end above where they begin", () => {
    const strokes = hairlinePicture("round")
      .hair.split("M")
      .slice(2)
      .map((stroke) => stroke.split("L").map((point) => point.split(" ").map(Number)))
    const central = strokes.filter(([[x]]) => Math.abs(x) < 20)
    expect(central.length).toBeGreaterThan(4)
    for (const stroke of central) expect(stroke[stroke.length - 1][1]).toBeLessThan(stroke[0][1])
  })
})
