import { type Foil, isFoil } from "../../../geometry/section/section"
import { bowlFigures } from "../../../presets/formula/bowlFigures"
import { consistencies } from "../../../presets/formula/consistency"
import { sheetOf } from "../document/salon"
import type { Mix, Plan } from "../document/schema"
import { netOf } from "../figures/measured"
import { chooseDeveloper, type DeveloperChoice } from "../mixing/developer"
import { consistencyOf, ratioFor } from "../mixing/ratio"
import { liftRequest } from "./liftRequest"

/** Foils that one mix can serve, in order of application, and why it is made so. */
export type ProposedMix = { mix: Mix; foils: readonly Foil[]; why: readonly string[] }

type Group = { recipe: Omit<Mix, "id">; foils: Foil[]; why: Set<string> }

/**
 * As few mixes as make sense: foils of one product whose hair asks for the same developer and the same consistency
 * share one; a group too small for the smallest bowl joins the largest of its developer and is mixed as that is.
 */
export function proposeMixes(plan: Plan): ProposedMix[] {
  const groups = new Map<string, Group>()
  for (const foil of plan.sections.filter(isFoil)) {
    const { recipe, why } = recipeFor(foil, plan)
    const key = JSON.stringify(recipe)
    const group = groups.get(key) ?? { recipe, foils: [], why: new Set() }
    group.foils.push(foil)
    for (const reason of why) group.why.add(reason)
    groups.set(key, group)
  }
  return joinSmall([...groups.values()], plan).map(({ recipe, foils, why }, index) => ({
    mix: { id: String.fromCharCode(65 + index), ...recipe },
    foils,
    why: [...why],
  }))
}

/** Whether the foils are mixed for as proposed already, whatever the letters. */
export const isMixedSo = (plan: Plan, proposed: readonly ProposedMix[]) =>
  new Set(plan.sections.filter(isFoil).map(({ mix }) => mix)).size === proposed.length &&
  proposed.every(({ mix, foils }) =>
    foils.every((foil) => {
      const own = plan.mixes.find(({ id }) => id === foil.mix)
      return own && JSON.stringify({ ...own, id: mix.id }) === JSON.stringify(mix)
    }),
  )

function recipeFor(foil: Foil, plan: Plan): { recipe: Omit<Mix, "id">; why: string[] } {
  const own = plan.mixes.find(({ id }) => id === foil.mix) ?? plan.mixes[0]
  const { product } = own
  const sheet = sheetOf(product, plan)
  if (!sheet) {
    const { developerVolume, ratio } = own
    return {
      recipe: { product, developerVolume, ratio, ...stirredIn(own) },
      why: [`There is no sheet for ${product}: its own directions decide.`],
    }
  }
  const choice = chooseDeveloper(sheet, liftRequest([foil], plan))
  const consistency = consistencyOf(foil, plan)
  return {
    recipe: {
      product,
      developerVolume: volumeOf(choice) ?? own.developerVolume,
      ratio: ratioFor(consistency, sheet),
      ...stirredIn(own),
    },
    why: [choice.why, `Mixed ${consistencies[consistency].words}.`],
  }
}

const stirredIn = ({ additives }: Mix) => additives && { additives }

/** The strength that a choice comes to: of stages the first, which is for this visit. */
function volumeOf(choice: DeveloperChoice): number | null {
  if (choice.kind === "chosen") return choice.volume
  if (choice.kind === "stages") return choice.stages[0].volume
  return choice.kind === "unknown" ? choice.usualVolume : null
}

function joinSmall(groups: readonly Group[], plan: Plan): Group[] {
  const wantedG = ({ foils }: Group) => foils.reduce((sum, foil) => sum + netOf(foil, plan).productG.high, 0)
  const largestFirst = groups.toSorted((a, b) => wantedG(b) - wantedG(a))
  const small = largestFirst.findLast(
    (group) =>
      wantedG(group) < bowlFigures.leastMixG.value && largestFirst.some((other) => canJoin(group, other)),
  )
  const host = small && largestFirst.find((other) => canJoin(small, other))
  if (!host) return [...groups]
  const joined = join(host, small, plan)
  return joinSmall(
    groups.flatMap((group) => (group === small ? [] : group === host ? [joined] : [group])),
    plan,
  )
}

const canJoin = (a: Group, b: Group) =>
  a !== b && a.recipe.product === b.recipe.product && a.recipe.developerVolume === b.recipe.developerVolume

const join = (host: Group, guest: Group, plan: Plan): Group => {
  const together = new Set([...host.foils, ...guest.foils])
  return {
    recipe: host.recipe,
    foils: plan.sections.filter(isFoil).filter((foil) => together.has(foil)),
    why: new Set([...host.why, "What is too little for a bowl of its own goes with the rest."]),
  }
}
