import { isFoil } from "../../../../geometry/section/section"
import { validateEdit } from "../../checks/validateEdit"
import type { Edit } from "../../document/edit"
import type { Mix, Plan } from "../../document/schema"

/** Writes a mix down: in place of the one with its letter, or as a new one. */
export const setMix =
  (mix: Mix): Edit =>
  (plan) => {
    const known = plan.mixes.some(({ id }) => id === mix.id)
    const mixes = known ? plan.mixes.map((each) => (each.id === mix.id ? mix : each)) : [...plan.mixes, mix]
    return validateEdit(plan, { ...plan, mixes })
  }

/** Takes a mix out, unless a foil is to be coated with it. */
export const removeMix =
  (id: string): Edit =>
  (plan) => {
    const users = plan.sections.filter(isFoil).filter(({ mix }) => mix === id)
    if (users.length > 0)
      return {
        refused: `Mix ${id} is used by ${foilsInWords(users)}: ${users.length === 1 ? "give it" : "give them"} another mix first`,
      }
    return validateEdit(plan, { ...plan, mixes: plan.mixes.filter((mix) => mix.id !== id) })
  }

const foilsInWords = (foils: readonly { mapNumber: number }[]) =>
  foils.length === 1
    ? `foil ${foils[0].mapNumber}`
    : `foils ${foils.map(({ mapNumber }) => mapNumber).join(", ")}`

/** The first letter no mix of the plan has, or null when all are used. */
export const freeMixLetter = ({ mixes }: Pick<Plan, "mixes">): string | null =>
  [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"].find((letter) => mixes.every(({ id }) => id !== letter)) ?? null
