import { type MixInPlan, mixesOfPlan } from "../../service/mixesOfPlan"
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
    return done({ mixes: mixes.flatMap(mixOf) })
  },
}

function mixOf({ mix: { id, product, developerVolume, ratio }, made }: MixInPlan) {
  if (!made) return []
  const percent = labelPercent(developerVolume)
  return [
    {
      id,
      product,
      developer: { volume: developerVolume, percent, from: [{ percent, grams: sumOf(made.bowls) }] },
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
