import { describe, expect, it } from "vitest"
import { isFoil } from "../../../geometry/section/section"
import { growStrands, type Strands } from "../../../geometry/strands/grow"
import { lightenStrands } from "../../../geometry/strands/lightened"
import { type SeenShare, seenShare } from "../../../geometry/strands/seenShare"
import { mirror } from "../../../geometry/surface/surfacePath"
import { tradeFigures } from "../../../presets/formula/tradeFigures"
import { strandFigures } from "../../../presets/placement/strands"
import { figuresOf, headOf } from "../../../web/core/figures/measured"
import { examplePlan } from "../../../web/core/file/examplePlan"

const plan = examplePlan()
const head = headOf(plan)
const heads = [1, 2, 3, 4, 5].map((seed) =>
  growStrands({
    head,
    hair: plan.hair,
    worn: { parting: { kind: "centre" } },
    figures: tradeFigures,
    strands: strandFigures,
    seed,
  }),
)

describe("the strands a section takes", () => {
  it.each([...plan.sections.filter(isFoil)])(
    "$kind $mapNumber: as many as its own figure says, within sampling error",
    (section) => {
      const { hairs } = figuresOf(section, plan)
      for (const strands of heads) {
        const taken = lightenStrands(strands, [section], head).by.filter((by) => by === 0).length
        const expected = hairs / strands.hairsEach
        // A count of so many by lot strays by its root; stitches of true pitch by as much again.
        expect(Math.abs(taken - expected)).toBeLessThan(4 * Math.sqrt(expected) + 4)
      }
    },
  )
  it("never has hair left out, nor hair that one before it has", () => {
    const slice = plan.sections.filter(isFoil)[0]
    const { id, parting, taken, depthMm, note } = slice
    const leftOut = {
      kind: "left-out" as const,
      id: `${id}-left`,
      parting,
      taken,
      depthMm,
      note,
      name: "veil",
    }
    const by = lightenStrands(heads[0], [leftOut, slice], head).by
    expect(by.some((place) => place >= 0)).toBe(false)
  })
  it("is light from where product starts on", () => {
    const light = lightenStrands(heads[0], plan.sections, head)
    light.by.forEach((place, strand) => {
      if (place < 0) return
      const section = plan.sections[place]
      if (!isFoil(section)) throw new Error("left-out hair is lightened")
      const cushionMm = section.kind === "backcomb" ? section.cushionMm : 0
      const startMm = Math.max(
        section.rootDistanceMm,
        cushionMm,
        section.strand.from * heads[0].lengthsMm[strand],
      )
      expect(light.fromMm[strand]).toBeCloseTo(startMm, 2)
      expect(light.toMm[strand]).toBeCloseTo(section.strand.to * heads[0].lengthsMm[strand], 2)
    })
  })
})

const lit = (strands: Strands, share: 0 | 1) => ({
  fromMm: new Float32Array(strands.count),
  toMm: strands.lengthsMm,
  by: new Int16Array(strands.count).fill(share - 1),
})

describe("the share of hair round the face that is light", () => {
  it("is nothing where nothing is lightened and all where all is", () => {
    expect(seenShare(head, heads[0], lit(heads[0], 0), 80)).toEqual({ left: 0, right: 0 })
    const all = seenShare(
      head,
      heads[0],
      { ...lit(heads[0], 1), toMm: heads[0].lengthsMm.map((mm) => mm + 1) },
      80,
    )
    expect(all).toEqual({ left: 1, right: 1 })
  })
  it("is the same left and right for a plan that is, within the error of five heads", () => {
    const front = plan.sections.filter(isFoil)[0]
    const pair = [front, { ...front, id: "mirror", parting: mirror(front.parting).toReversed() }]
    const shares = heads.map(
      (strands): SeenShare => seenShare(head, strands, lightenStrands(strands, pair, head), 80),
    )
    const apart = shares.map(({ left, right }) => left - right)
    const mean = apart.reduce((sum, value) => sum + value, 0) / apart.length
    const deviation = Math.sqrt(
      apart.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (apart.length - 1),
    )
    expect(Math.abs(mean)).toBeLessThan((4.6 * deviation) / Math.sqrt(apart.length) + 1e-9) // Student's t, 4 degrees, 99 %
  })
})
