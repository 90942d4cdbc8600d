import { coatsOf, isFoil } from "../../../../geometry/section/section"
import { validateEdit } from "../../checks/validateEdit"
import { type Edit, refuse } from "../../document/edit"
import type { Mix } from "../../document/schema"
import { saidPiece } from "../../kinds/saidPiece"

/** Puts these mixes in place of all others, each with the foils it serves; they tell of no second mix along a strand. */
export const regroupMixes =
  (groups: readonly { mix: Mix; foils: readonly { id: string }[] }[]): Edit =>
  (plan) => {
    const mixOf = new Map(groups.flatMap(({ mix, foils }) => foils.map(({ id }) => [id, mix.id] as const)))
    const left = plan.sections.filter(isFoil).find((foil) => !mixOf.has(foil.id) || coatsOf(foil).length > 1)
    if (left) return refuse({ code: "foil-without-mix", foil: left.mapNumber, ...saidPiece([left]) })
    return validateEdit(plan, {
      ...plan,
      mixes: groups.map(({ mix }) => mix),
      sections: plan.sections.map((section) =>
        isFoil(section) ? { ...section, mix: mixOf.get(section.id) ?? section.mix } : section,
      ),
    })
  }
