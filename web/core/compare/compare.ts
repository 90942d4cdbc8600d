import type { Head } from "../../../geometry/scalp/head"
import { onOtherSide } from "../../../geometry/scalp/onOtherSide"
import { isFoil, type Section } from "../../../geometry/section/section"
import { matching } from "../../../presets/sheets/comparing"
import type { Plan } from "../document/schema"
import { headOf } from "../figures/measured"
import { sideOf } from "../placement/places"
import { assign } from "./assign"
import {
  type Criterion,
  criteria,
  type Differences,
  differencesOf,
  metWithin,
  type Tolerances,
  usualTolerances,
} from "./differences"
import { inOrder } from "./inOrder"
import { type Model, modelOn } from "./modelOn"
import { apart, type Traced, tracedOn } from "./traced"

/** A section of the model and what the learner did of it; places are those in the order of application, from 1. */
export type ComparedPair = {
  model: Section
  learner: Section
  place: { model: number; learner: number }
  /** The same counted among the sections that were matched alone: what is missing moves nothing. */
  rank: { model: number; learner: number }
  /** It was done on the other side of the head; the measures are held against the model's mirror image. */
  isMirrored: boolean
  found: Differences
  /** Null where there is nothing to hold a criterion against. */
  met: Readonly<Record<Criterion, boolean | null>>
}

export type Comparison = {
  /** In the model's order of application. */
  pairs: readonly ComparedPair[]
  missing: readonly { model: Section; place: number }[]
  extra: readonly { learner: Section; place: number }[]
  /** The whole was done as the model's mirror image. */
  isMirrored: boolean
  /** The model's own sections, laid on the learner's head. */
  model: readonly Section[]
  isLaidAnew: boolean
  /** Sections of the model for which the learner's head has no room: nobody is asked for them. */
  noRoom: number
  /** How often each criterion is met, of how many sections of the model; what is missing meets none. */
  score: readonly { criterion: Criterion; met: number; of: number }[]
}

/** A learner's plan held against a model, section by section, on the learner's head. */
export function compare(model: Model, learner: Plan, allowed: Tolerances = usualTolerances): Comparison {
  const head = headOf(learner)
  const { sections, noRoom, isLaidAnew } = modelOn(model, learner)
  const done = learner.sections.map((section) => tracedOn(head, section))
  const { found, sought, isMirrored } = pairUp(sections, done, head)
  const ranks = ranksOf(found.map((each) => each.learner))
  const rightly = inOrder(ranks)
  const pairs = found.map((each, i): ComparedPair => {
    const wanted = tracedOn(head, sought(each).sections[each.model])
    const differences = differencesOf(wanted, done[each.learner], head)
    return {
      model: sections[each.model],
      learner: learner.sections[each.learner],
      place: { model: each.model + 1, learner: each.learner + 1 },
      rank: { model: i + 1, learner: ranks[i] },
      isMirrored: each.isMirrored,
      found: differences,
      met: metBy(differences, allowed, { side: !each.isMirrored, order: rightly[i] }),
    }
  })
  const missing = without(sections, new Set(found.map((each) => each.model)))
  const extra = without(learner.sections, new Set(found.map((each) => each.learner)))
  return {
    pairs,
    missing: missing.map(({ section, place }) => ({ model: section, place })),
    extra: extra.map(({ section, place }) => ({ learner: section, place })),
    isMirrored,
    model: sections,
    isLaidAnew,
    noRoom,
    score: criteria.map((criterion) => scoreOf(criterion, pairs, missing)),
  }
}

const ranksOf = (places: readonly number[]) =>
  places.map((place) => places.filter((other) => other <= place).length)

const without = (sections: readonly Section[], taken: ReadonlySet<number>) =>
  sections.flatMap((section, i) => (taken.has(i) ? [] : [{ section, place: i + 1 }]))

/** Sections of the model as they are looked for: as they stand, or as their mirror images. */
type Sought = { sections: readonly Section[]; isMirrored: boolean }
type Pairing = { model: number; learner: number; isMirrored: boolean }
type Matched = { pairs: readonly Pairing[]; cost: number }

const imageOn = (section: Section, head: Head): Section => ({
  ...section,
  parting: onOtherSide(head, section.parting),
})

/** Whose section is whose: as the model stands or, where that costs far less, as its mirror image; and of the rest the other way round. */
function pairUp(sections: readonly Section[], done: readonly Traced[], head: Head) {
  const wanted: Sought = { sections, isMirrored: false }
  const image: Sought = { sections: sections.map((each) => imageOn(each, head)), isMirrored: true }
  const [asDrawn, turned] = [wanted, image].map((each) => matched(each, done, head))
  const isMirrored =
    turned.cost <= matching.mirroredShare.value * asDrawn.cost &&
    asDrawn.cost - turned.cost > matching.aloneMm.value
  const first = isMirrored ? turned : asDrawn
  const rest = leftOver(first, isMirrored ? wanted : image, done, head)
  return {
    isMirrored,
    sought: (pairing: Pairing) => (pairing.isMirrored ? image : wanted),
    found: [...first.pairs, ...rest].sort((a, b) => a.model - b.model),
  }
}

/** The pairs that cost least in all, by kind, side and place alone: in what order they were done says nothing. */
function matched({ sections, isMirrored }: Sought, done: readonly Traced[], head: Head): Matched {
  const alone = matching.aloneMm.value
  const costs = sections.map((section) => {
    const wanted = tracedOn(head, section)
    return done.map((each) => costOf(wanted, each))
  })
  const pairs = assign(costs, alone)
  const paired = pairs.reduce((sum, [model, learner]) => sum + costs[model][learner], 0)
  return {
    pairs: pairs.map(([model, learner]) => ({ model, learner, isMirrored })),
    cost: paired + alone * (sections.length + done.length - 2 * pairs.length),
  }
}

function costOf(model: Traced, learner: Traced): number {
  const isKind = model.section.kind === learner.section.kind
  const sides = new Set([sideOf(model.section), sideOf(learner.section)])
  const isAcross = sides.has("left") && sides.has("right")
  return (
    apart(model, learner).apartMm +
    (isKind ? 0 : matching.kindMm.value) +
    (isAcross ? matching.sideMm.value : 0)
  )
}

/** Of what found no partner, the pairs on the other side of the head. */
function leftOver({ pairs }: Matched, sought: Sought, done: readonly Traced[], head: Head): Pairing[] {
  const [models, learners] = [
    new Set(pairs.map(({ model }) => model)),
    new Set(pairs.map(({ learner }) => learner)),
  ]
  const wanted = [...sought.sections.keys()].filter((i) => !models.has(i))
  const extra = [...done.keys()].filter((i) => !learners.has(i))
  const rest = matched(
    { ...sought, sections: wanted.map((i) => sought.sections[i]) },
    extra.map((i) => done[i]),
    head,
  )
  return rest.pairs.map(({ model, learner, isMirrored }) => ({
    model: wanted[model],
    learner: extra[learner],
    isMirrored,
  }))
}

const metBy = (
  found: Differences,
  allowed: Tolerances,
  beside: { side: boolean; order: boolean },
): ComparedPair["met"] => ({
  ...metWithin(found, allowed),
  taken: found.taken.model === found.taken.learner,
  kind: found.kind.model === found.kind.learner,
  ...beside,
})

function scoreOf(
  criterion: Criterion,
  pairs: readonly ComparedPair[],
  missing: readonly { section: Section }[],
) {
  const asked = pairs.filter(({ met }) => met[criterion] !== null)
  const lost = missing.filter(({ section }) => criterion !== "start" || isFoil(section))
  return {
    criterion,
    met: asked.filter(({ met }) => met[criterion]).length,
    of: asked.length + lost.length,
  }
}
