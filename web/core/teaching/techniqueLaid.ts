import { isFoil, type Section } from "../../../geometry/section/section"
import {
  type TechniqueSection,
  type TechniqueValues,
  usualValues,
} from "../../../presets/techniques/technique"
import { type HouseTechnique, techniques } from "../../../presets/techniques/techniques"
import type { Plan } from "../document/schema"
import { techniqueSections } from "../edits/lay/layTechnique"
import { isAlike } from "./teachingSteps"

const apart = 1e-4

/** A technique of the house, done in one of its ways. */
export type TechniqueLaid = { house: HouseTechnique; values: TechniqueValues }

/** The technique of the house that a plan holds as it is laid, and nothing else; null where anything was changed. */
export function techniqueLaid(plan: Plan): TechniqueLaid | null {
  const all = techniques.flatMap((house): TechniqueLaid[] => {
    const usual = usualValues(house)
    return waysOf(house).map((way) => ({ house, values: { ...usual, way } }))
  })
  return all.find(({ house, values }) => isLaid(house.shape(values).sections, plan)) ?? null
}

const waysOf = ({ parameters }: HouseTechnique) =>
  "ways" in parameters ? parameters.ways : (["only"] as const)

function isLaid(wanted: readonly TechniqueSection[], plan: Plan): boolean {
  const { sections } = plan
  if (sections.length === 0 || sections.length > wanted.length * 2) return false
  const laid = techniqueSections({ sections: wanted }, { ...plan, sections: [] })
  return laid.length === sections.length && laid.every((each, i) => isSame(each, sections[i]))
}

/** The mix is the plan's, and what left-out hair is called is in the language of whoever laid it. */
const asIn = (plan: Section, laid: Section): Section =>
  isFoil(laid) && isFoil(plan)
    ? { ...laid, mix: plan.mix }
    : isFoil(laid) || isFoil(plan)
      ? laid
      : { ...laid, name: plan.name }

const isSame = (one: Section, other: Section) =>
  isAlike(asIn(other, one), other) &&
  one.parting.length === other.parting.length &&
  one.parting.every(([u, v], i) => {
    const [otherU, otherV] = other.parting[i]
    return Math.hypot(u - otherU, v - otherV) < apart
  })
