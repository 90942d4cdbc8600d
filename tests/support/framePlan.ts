import { hairlineParting, straightParting } from "../../geometry/parting/parting"
import type { Section } from "../../geometry/section/section"
import type { SurfacePath } from "../../geometry/surface/surfacePath"
import { newPlan } from "../../web/core/document/newPlan"
import { newSection } from "../../web/core/document/newSection"
import type { Plan } from "../../web/core/document/schema"
import { headOf } from "../../web/core/figures/measured"

const empty: Plan = {
  ...newPlan(new Date(2026, 2, 9)),
  id: "frame",
  name: "Face frame",
  client: { initials: "K.W." },
  note: "asthma in childhood",
  mixes: [
    { id: "A", product: "House powder", developerVolume: 20, ratio: { lightener: 1, developer: 2 } },
    { id: "B", product: "House clay", developerVolume: 10, ratio: { lightener: 2, developer: 3 } },
  ],
}
const head = headOf(empty)

const partingOf = (parted: ReturnType<typeof hairlineParting>): SurfacePath => {
  if ("refused" in parted) throw new Error(parted.refused)
  return parted.parting
}
const along = (from: number, to: number, behindMm: number) =>
  partingOf(hairlineParting(head, { fromAlongMm: from, toAlongMm: to, behindMm }))

/** The empty plan with these sections, numbered from 1 in the order given. */
function planOf(...makers: ((plan: Plan) => Section)[]): Plan {
  const sections: Section[] = []
  for (const make of makers) sections.push(make({ ...empty, sections }))
  return { ...empty, sections }
}

/** A slice, a weave, hair left out on the head's right, and a slice on its left with the other mix. */
export const framePlan = planOf(
  (plan) => ({ ...newSection("slice", along(8, 70, 4), plan), depthMm: { start: 2, end: 3.5 } }),
  (plan) => ({ ...newSection("weave", along(10, 90, 14), plan), stitchMm: 3, gapMm: 2, dipMm: 5 }),
  (plan) => ({ ...newSection("left-out", along(10, 60, 20), plan), name: "Veil" }),
  (plan) => ({ ...newSection("slice", along(-8, -70, 4), plan), mix: "B", note: "sore spot" }),
)

/** So many slices on both sides, one behind the other. */
export const manyPlan = (count: number): Plan =>
  planOf(
    ...Array.from({ length: count }, (_, i) => (plan: Plan) => {
      const side = i % 2 === 0 ? 1 : -1
      return newSection("slice", along(side * 8, side * (50 + (i % 5) * 6), 4 + 1.5 * i), plan)
    }),
  )

/** One slice low on the back of the head, which neither the front nor a side shows well. */
export const backPlan = planOf((plan) =>
  newSection(
    "slice",
    partingOf(
      straightParting(head, head.surface.toSurface([-30, -85, 40]), head.surface.toSurface([30, -85, 40])),
    ),
    plan,
  ),
)
