import { fitParting } from "../../../geometry/placing/technique"
import type { Head } from "../../../geometry/scalp/head"
import type { Section } from "../../../geometry/section/section"
import type { Technique, TechniqueSection } from "../../../presets/techniques/technique"
import type { Plan } from "../document/schema"
import { techniqueSections } from "../edits/lay/layTechnique"
import { headOf } from "../figures/measured"
import { techniqueLaid } from "../teaching/techniqueLaid"
import { captureSections } from "../technique/captureTechnique"

/** What a learner's work is compared with: a technique, or a plan that somebody drew. */
export type Model = { technique: Pick<Technique, "sections"> } | { plan: Plan }

/** The model's sections on a head, in its order, and how many of them have no room there. */
export type LaidModel = { sections: readonly Section[]; noRoom: number; isLaidAnew: boolean }

/**
 * The model on the learner's head. A technique is laid there by its own measures, and so is a plan that holds a technique of
 * the house as it was laid. Any other plan stays as it was drawn on the same head; on another each point of a parting goes
 * where the hairline tells it: so far from one landmark to the next, and so many mm behind.
 */
export function modelOn(model: Model, learner: Plan): LaidModel {
  const empty: Plan = { ...learner, consultation: undefined, sections: [] }
  if ("technique" in model) return layAnew(model.technique.sections, empty)
  const { plan } = model
  const [from, to] = [headOf(plan), headOf(learner)]
  if (from === to) return { sections: plan.sections, noRoom: 0, isLaidAnew: false }
  const laid = techniqueLaid(plan)
  if (laid) return layAnew(laid.house.shape(laid.values).sections, empty)
  return toldByHairline(plan.sections, from, to)
}

function layAnew(rows: readonly TechniqueSection[], empty: Plan): LaidModel {
  const sections = techniqueSections({ sections: rows }, empty)
  const asked = rows.reduce((count, { single }) => count + (single ? 1 : 2), 0)
  return { sections, noRoom: Math.max(0, asked - sections.length), isLaidAnew: true }
}

function toldByHairline(drawn: readonly Section[], from: Head, to: Head): LaidModel {
  const told = captureSections(drawn, from)
  const sections = drawn.flatMap((section, i) => {
    const fitted = fitParting(to, told[i].parting)
    return "parting" in fitted ? [{ ...section, parting: fitted.parting }] : []
  })
  return { sections, noRoom: drawn.length - sections.length, isLaidAnew: true }
}
