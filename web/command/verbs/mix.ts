import { type MixInPlan, mixesOfPlan } from "../../core/bowls/mixesOfPlan"
import { tonersOfPlan } from "../../core/bowls/toners"
import { clearanceOf } from "../../core/cautions/clearance"
import { newSalon } from "../../core/document/salon"
import type { Plan } from "../../core/document/schema"
import type { Part } from "../../core/mixing/blend"
import { pourDeveloper } from "../../core/mixing/pourDeveloper"
import { labelPercent } from "../../core/mixing/strength"
import { nowHere } from "../../session/nowHere"
import { say } from "../../words/say"
import { readPlan } from "../input/openFile"
import { done, refuse, type Verb } from "../input/verb"
import { clearanceFields } from "./check"

export const mix: Verb = {
  usage: "FILE",
  takesFile: true,
  options: [],
  run(request) {
    const read = readPlan(request)
    if (!read.ok) return refuse(...read.problems)
    const mixes = mixesOfPlan(read.plan)
    const { cautions, formula, timing } = request.words
    const problems = mixes.flatMap(({ problems, untimed }) => [
      ...problems.map((problem) => say(formula.mixing.problem, problem)),
      ...untimed.map((problem) => say(timing.problems, problem)),
    ])
    if (problems.length > 0) return refuse(...problems)
    const { bottles } = read.plan.salon ?? newSalon()
    const costs = mixes.flatMap(({ made }) => (made ? [made.cost] : []))
    const told = clearanceOf(read.plan, nowHere())
    return {
      ...done({
        ...clearanceFields(told, request.words),
        mixes: mixes.flatMap((planned) => mixOf(planned, bottles)),
        ...toners(read.plan),
        ...(costs.length > 0 && costs.every((cost) => cost !== null) ? { cost: totalOf(costs) } : {}),
      }),
      problems: [
        cautions.clearance.sentence(told),
        ...told.stops.map(({ why }) => cautions.held(say(cautions.why, why))),
      ],
    }
  },
}

function mixOf(
  { mix: { id, product, developerVolume, ratio }, made }: MixInPlan,
  bottles: readonly number[],
) {
  if (!made) return []
  const percent = labelPercent(developerVolume)
  return [
    {
      id,
      product,
      developer: {
        volume: developerVolume,
        percent,
        from: poured(developerVolume, bottles, sumOf(made.bowls)),
      },
      ratio: ratio.developer / ratio.lightener,
      onHeadPercent: made.onHeadPercent,
      wantedG: made.wantedG,
      bowls: made.bowls.map(({ atMin, lightenerG, developerG, developerMl, sections }) => ({
        atMin,
        lightenerG,
        developerG,
        developerMl,
        sections,
      })),
      ...(made.cost === null ? {} : { cost: made.cost }),
    },
  ]
}

/** What is weighed for each toner that has been chosen. */
function toners(plan: Plan) {
  const chosen = tonersOfPlan(plan).flatMap(({ tones, choice, wantedG, bowl }) =>
    choice && bowl
      ? [
          {
            zones: tones.map(({ zone }) => zone),
            product: choice.product,
            developerVolume: choice.developerVolume,
            ratio: choice.parts,
            wantedG,
            tonerG: bowl.lightenerG,
            clearG: bowl.clearG,
            developerG: bowl.developerG,
            developerMl: bowl.developerMl,
          },
        ]
      : [],
  )
  return chosen.length > 0 ? { toners: chosen } : {}
}

const totalOf = (amounts: readonly number[]) => amounts.reduce((sum, amount) => sum + amount, 0)

const sumOf = (bowls: readonly { developerG: number }[]) =>
  bowls.reduce((sum, { developerG }) => sum + developerG, 0)

/** The bottle itself, or the two of the shelf that make it; the bottle again where they cannot. */
function poured(volume: number, bottles: readonly number[], grams: number): readonly Part[] {
  const blended = pourDeveloper(volume, bottles, grams)
  return blended && "parts" in blended ? blended.parts : [{ percent: labelPercent(volume), grams }]
}
