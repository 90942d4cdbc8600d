import { expect, test } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import { mixesOfPlan } from "../../../../web/core/bowls/mixesOfPlan"
import { weighables } from "../../../../web/core/bowls/weighables"
import type { Plan } from "../../../../web/core/document/schema"
import { emptyPlan, samplePlan } from "../../../support/samples"

const [mixA] = samplePlan.mixes
const [s1, s2, s3] = samplePlan.sections.filter(isFoil)
const bowl = (mix: string, number: number, ...foils: number[]) => ({ code: "bowl", mix, bowl: number, foils })

test("the bowls can be put on the scale first, then each foil by itself, by their numbers on the map", () => {
  expect(weighables(samplePlan)).toEqual([
    { key: "A0", name: bowl("A", 1, 1, 2, 3), mix: "A", product: mixA.product, ids: [s1.id, s2.id, s3.id] },
    ...[s1, s2, s3].map(({ id, mapNumber }) => ({
      key: id,
      name: { code: "foil", foil: mapNumber },
      mix: "A",
      product: mixA.product,
      ids: [id],
    })),
  ])
})

test("nothing is weighed where there is no foil; what cannot be mixed has its foils alone", () => {
  expect(weighables(emptyPlan)).toEqual([])
  const upsideDown: Plan = { ...samplePlan, mixes: [{ ...mixA, ratio: { lightener: 2, developer: 1 } }] }
  expect(weighables(upsideDown).map(({ key }) => key)).toEqual([s1, s2, s3].map(({ id }) => id))
})

test("two mixes along a strand are weighed apart, each with the product of its own", () => {
  const mixB = { ...mixA, id: "B", product: "Tub" }
  const rooted = { ...s1, roots: { mix: "B", toMm: 30, first: "ends" as const } }
  const plan: Plan = { ...samplePlan, mixes: [mixA, mixB], sections: [rooted, s2] }
  expect(mixesOfPlan(plan).map(({ mix, users }) => [mix.id, users])).toEqual([
    ["A", 2],
    ["B", 1],
  ])
  expect(weighables(plan).map(({ key, name, mix, product }) => [key, name, mix, product])).toEqual([
    ["A0", bowl("A", 1, 1, 2), "A", mixA.product],
    ["B0", bowl("B", 1, 1), "B", "Tub"],
    [`${s1.id} ends`, { code: "coat", foil: 1, part: "ends", mix: "A" }, "A", mixA.product],
    [`${s1.id} roots`, { code: "coat", foil: 1, part: "roots", mix: "B" }, "B", "Tub"],
    [s2.id, { code: "foil", foil: 2 }, "A", mixA.product],
  ])
})
