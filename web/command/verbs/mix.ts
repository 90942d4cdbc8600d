import { newSalon } from "../../plan/salon"
import type { Part } from "../../service/blend"
import { type MixInPlan, mixesOfPlan } from "../../service/mixesOfPlan"
import { pourDeveloper } from "../../service/pourDeveloper"
import { labelPercent } from "../../service/strength"
import { readPlan } from "../openFile"
import { done, refuse, type Verb } from "../verb"

export const mix: Verb = {
  usage: "FILE",
  summary: "What to mix for the plan: strength, grams wanted, and each bowl with its minute.",
  takesFile: true,
  options: {},
  run(request) {
    const read = readPlan(request)
    if (!read.ok) return refuse(...read.problems)
    const mixes = mixesOfPlan(read.plan)
    const problems = mixes.flatMap((planned) => planned.problems)
    if (problems.length > 0) return refuse(...problems)
    const { bottles } = read.plan.salon ?? newSalon()
    return done({ mixes: mixes.flatMap((planned) => mixOf(planned, bottles)) })
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

const sumOf = (bowls: readonly { developerG: number }[]) =>
  bowls.reduce((sum, { developerG }) => sum + developerG, 0)

/** The bottle itself, or the two of the shelf that make it; the bottle again where they cannot. */
function poured(volume: number, bottles: readonly number[], grams: number): readonly Part[] {
  const blended = pourDeveloper(volume, bottles, grams)
  return blended && "parts" in blended ? blended.parts : [{ percent: labelPercent(volume), grams }]
}
