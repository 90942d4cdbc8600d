import { describe, expect, it } from "vitest"
import { techniqueOf, usualValues } from "../../../presets/techniques/technique"
import { techniques } from "../../../presets/techniques/techniques"

describe("the techniques of the house", () => {
  it("are at least eight, each under an id of its own", () => {
    expect(techniques.length).toBeGreaterThanOrEqual(8)
    expect(new Set(techniques.map(({ id }) => id)).size).toBe(techniques.length)
  })

  it.each(techniques)("$name: says what it is for and what the hands do, in order", (preset) => {
    const { aim, notes, steps } = techniqueOf(preset)
    expect(aim).toMatch(/\.$/)
    expect(notes.length).toBeGreaterThan(60)
    expect(steps.length).toBeGreaterThanOrEqual(5)
    for (const step of steps) expect(step).toMatch(/^[A-Z].*[.]$/)
  })

  it.each(techniques)(
    "$name: a usual value lies in its span",
    ({ parameters: { stitch: _, ...measures } }) => {
      for (const { value, range } of Object.values(measures)) {
        expect(value).toBeGreaterThanOrEqual(range[0])
        expect(value).toBeLessThanOrEqual(range[1])
      }
    },
  )
})

describe("what is varied", () => {
  const preset = techniques.find(({ id }) => id === "temple-to-temple") ?? techniques[0]
  const varyTechnique = techniqueOf(preset, { ...usualValues(preset), depthMm: 2, gapMm: 6, count: 4 })

  it("moves the rows: 3.5 mm of edge, then 2 taken and 6 left, four times", () => {
    expect(
      varyTechnique.sections.map(({ parting }) => ("from" in parting ? parting.from.behindMm : 0)),
    ).toEqual([5.5, 13.5, 21.5, 29.5])
    expect(varyTechnique.sections.map(({ depthMm }) => depthMm.start)).toEqual([2, 2, 2, 2])
  })

  it("is said in the steps", () => {
    expect(varyTechnique.steps.join(" ")).toMatch(
      /5\.5 mm behind.*take 2 mm in front.*Leave 6 mm.*four slices/,
    )
  })
})
