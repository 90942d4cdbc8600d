import { coatsOf, type Foil, isFoil } from "../../../geometry/section/section"
import { bowlFigures } from "../../../presets/formula/bowlFigures"
import type { Consistency } from "../../../presets/formula/consistency"
import { sheetOf } from "../document/salon"
import type { Mix, Plan } from "../document/schema"
import { netOf } from "../figures/measured"
import type { DeveloperChoice, DeveloperReason } from "../mixing/developer"
import { consistencyOf, ratioFor } from "../mixing/ratio"
import { developerFor } from "./developerFor"

/** Foils that one mix can serve, in order of application, and why it is made so. */
export type ProposedMix = { mix: Mix; foils: readonly Foil[]; why: readonly MixReason[] }

export type MixReason =
  | DeveloperReason
  | { code: "no-sheet"; product: string }
  | { code: "consistency"; consistency: Consistency }
  | { code: "joined" }

type Group = { recipe: Omit<Mix, "id">; foils: Foil[]; why: readonly MixReason[] }

/**
 * As few mixes as make sense: foils of one product whose hair asks for the same developer and the same consistency
 * share one; a group too small for the smallest bowl joins the largest of its developer and is mixed as that is. Two mixes
 * along one strand were chosen for each other by hand: nothing is proposed in their place.
 */
export function proposeMixes(plan: Plan): ProposedMix[] {
  if (plan.sections.some((section) => isFoil(section) && coatsOf(section).length > 1)) return []
  const groups = new Map<string, Group>()
  for (const foil of plan.sections.filter(isFoil)) {
    const { recipe, why } = recipeFor(foil, plan)
    const key = JSON.stringify(recipe)
    const group = groups.get(key) ?? { recipe, foils: [], why: [] }
    group.foils.push(foil)
    groups.set(key, { ...group, why: bothOf(group.why, why) })
  }
  return joinSmall([...groups.values()], plan).map(({ recipe, foils, why }, index) => ({
    mix: { id: String.fromCharCode(65 + index), ...recipe },
    foils,
    why,
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

function recipeFor(foil: Foil, plan: Plan): { recipe: Omit<Mix, "id">; why: MixReason[] } {
  const own = plan.mixes.find(({ id }) => id === foil.mix) ?? plan.mixes[0]
  const { product } = own
  const sheet = sheetOf(product, plan)
  if (!sheet) {
    const { developerVolume, ratio } = own
    return {
      recipe: { product, developerVolume, ratio, ...stirredIn(own) },
      why: [{ code: "no-sheet", product }],
    }
  }
  const consistency = consistencyOf(foil, plan)
  const ratio = ratioFor(consistency, sheet)
  const choice = developerFor({ ...own, ratio }, sheet, [foil], plan)
  return {
    recipe: {
      product,
      developerVolume: volumeOf(choice) ?? own.developerVolume,
      ratio,
      ...stirredIn(own),
    },
    why: [choice.why, { code: "consistency", consistency }],
  }
}

const stirredIn = ({ additives }: Mix) => additives && { additives }

/** The strength of one visit; where that takes several, or is not known, nothing is proposed in place of what is planned. */
const volumeOf = (choice: DeveloperChoice): number | null => (choice.kind === "chosen" ? choice.volume : null)

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
    why: bothOf(host.why, [{ code: "joined" }]),
  }
}

/** Reasons of both, each once. */
const bothOf = (some: readonly MixReason[], more: readonly MixReason[]): MixReason[] => [
  ...new Map([...some, ...more].map((reason) => [JSON.stringify(reason), reason])).values(),
]
