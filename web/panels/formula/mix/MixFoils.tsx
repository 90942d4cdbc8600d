import { type Foil, isCoatedWith, isFoil, rootsOf } from "../../../../geometry/section/section"
import type { Mix } from "../../../core/document/schema"
import { changeSection } from "../../../core/edits/sections/changeSections"
import { headOf } from "../../../core/figures/measured"
import { pieceOf } from "../../../core/kinds/kindRecords"
import { coatCodes } from "../../../core/placement/coatCodes"
import { placeOf } from "../../../core/placement/places"
import { commit } from "../../../session/commit"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { say } from "../../../words/say"
import { Choices } from "../../fields/Choices"

/** The foils a mix serves, each of which can be given another by hand; of two mixes along a strand it is told, and changed where the foil is. */
export function MixFoils({ mix }: { mix: Mix }) {
  const { common, formula } = useWords()
  const w = formula.mixing
  const plan = usePlan((open) => open)
  const foils = plan.sections.filter(isFoil).filter((foil) => isCoatedWith(foil, mix.id))
  if (foils.length === 0 || plan.mixes.length < 2) return null
  const letters = plan.mixes.map(({ id }) => ({ value: id, label: id }))
  const [single, rooted] = [foils.filter((foil) => !rootsOf(foil)), foils.filter(rootsOf)]
  const move = (foil: Foil, to: string) =>
    commit(
      { chapter: "formula", code: "give-foil-mix", foil: foil.mapNumber, mix: to },
      changeSection(foil.id, { treatment: { mix: to } }),
    )
  return (
    <details>
      <summary>{w.moveFoil}</summary>
      <ul className="mix-foils">
        {single.map((foil) => (
          <li key={foil.id}>
            <Choices
              legend={w.foilIn({
                foil: foil.mapNumber,
                piece: pieceOf([foil]),
                kind: common.kinds[foil.kind],
                place: say(common.place, placeOf(foil, headOf(plan))),
              })}
              options={letters}
              value={foil.mix}
              onChange={(to) => move(foil, to)}
            />
          </li>
        ))}
        {rooted.map((foil) => (
          <li key={foil.id}>
            <p>
              {w.foilIn({
                foil: foil.mapNumber,
                piece: pieceOf([foil]),
                kind: common.kinds[foil.kind],
                place: say(common.place, placeOf(foil, headOf(plan))),
              })}
              : {common.coats(coatCodes(foil))}
            </p>
          </li>
        ))}
      </ul>
    </details>
  )
}
