import { isNear, overlapCm2 } from "../../geometry/section/overlap"
import type { Section } from "../../geometry/section/section"
import { headOf } from "./measured"
import type { Plan } from "./schema"

/** Two sections that take the same hair; the later one in order of application is the one to change. */
export type Overlap = { earlier: Section; later: Section; areaCm2: number }

/** Less than this is the width of a comb's tooth along an edge, cm2. */
export const leastOverlapCm2 = 0.1

const known = new WeakMap<Section, WeakMap<Section, { head: object; areaCm2: number }>>()

/** Every pair of sections that take the same hair, in order of application. A pair is looked at once for as long as both stay. */
export function overlapsOf(plan: Plan): Overlap[] {
  const { sections } = plan
  return sections.flatMap((later, i) =>
    sections.slice(0, i).flatMap((earlier) => {
      const areaCm2 = sharedCm2(earlier, later, plan)
      return areaCm2 >= leastOverlapCm2 ? [{ earlier, later, areaCm2 }] : []
    }),
  )
}

function sharedCm2(a: Section, b: Section, plan: Plan): number {
  const head = headOf(plan)
  if (!isNear(a, b, head)) return 0
  const ofA = known.get(a) ?? new WeakMap()
  known.set(a, ofA)
  const seen = ofA.get(b)
  if (seen?.head === head) return seen.areaCm2
  const areaCm2 = overlapCm2(a, b, head)
  ofA.set(b, { head, areaCm2 })
  return areaCm2
}
