import { expect, it } from "vitest"
import { letters } from "../../../../web/core/fields/limits"
import { withoutPlans } from "../../../../web/core/weighing/withoutPlans"

const named = (name: string) => ({ weighedAt: "2026-03-09T10:00:00Z", name })
const left = (name: string, plan: string) =>
  (withoutPlans([named(name)], [{ id: "p", name: plan }]) as { name: string }[])[0].name

it("takes the name of a plan out of a weighing, as a whole word of any script", () => {
  expect(left("9 March, Frame (A.B.), bowl A", "Frame (A.B.)")).toBe("9 March, …, bowl A")
  expect(left("9 березня, Їжак, миска А", "Їжак")).toBe("9 березня, …, миска А")
  expect(left("9 March, Framework, bowl A", "Frame")).toBe("9 March, Framework, bowl A")
  expect(left("9 March, , bowl A", " ")).toBe("9 March, , bowl A")
})

it("takes it out where the end of the field cut it off", () => {
  const plan = `Quillfeather ${"x".repeat(60)}`
  const name = `9 March 2026, 12:30, ${plan}`.slice(0, letters.name)
  expect([...name]).toHaveLength(80)
  expect(left(name, plan)).toBe("9 March 2026, 12:30, …")
})

it("leaves everything that is no weighing as it is", () => {
  const salon = { bottles: [20], sheets: [{ name: "Frame" }], weighings: [named("Frame")], none: null }
  expect(withoutPlans(salon, [{ id: "p", name: "Frame" }])).toEqual({ ...salon, weighings: [named("…")] })
})
