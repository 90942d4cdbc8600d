import { isCoatedWith, isFoil } from "../../../../geometry/section/section"
import { validateEdit } from "../../checks/validateEdit"
import { type Edit, refuse } from "../../document/edit"
import type { Mix, Plan } from "../../document/schema"
import { saidPiece } from "../../kinds/saidPiece"

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
    const users = plan.sections.filter(isFoil).filter((foil) => isCoatedWith(foil, id))
    if (users.length > 0)
      return refuse({
        code: "mix-in-use",
        mix: id,
        foils: users.map(({ mapNumber }) => mapNumber),
        ...saidPiece(users),
      })
    return validateEdit(plan, { ...plan, mixes: plan.mixes.filter((mix) => mix.id !== id) })
  }

/** The first letter no mix of the plan has, or null when all are used. */
export const freeMixLetter = ({ mixes }: Pick<Plan, "mixes">): string | null =>
  [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"].find((letter) => mixes.every(({ id }) => id !== letter)) ?? null
