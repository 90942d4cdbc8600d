import { type Foil, isFoil } from "../../../geometry/section/section"
import { act } from "../../plan/act"
import { changeSection } from "../../plan/edits/changeSections"
import { headOf } from "../../plan/measured"
import type { Mix } from "../../plan/schema"
import { usePlan } from "../../plan/usePlan"
import { kindWords, whereOf } from "../../plan/words"
import { Choices } from "../Choices"

/** The foils a mix serves, each of which can be given another by hand. */
export function MixFoils({ mix }: { mix: Mix }) {
  const plan = usePlan((open) => open)
  const foils = plan.sections.filter(isFoil).filter((foil) => foil.mix === mix.id)
  if (foils.length === 0 || plan.mixes.length < 2) return null
  const letters = plan.mixes.map(({ id }) => ({ value: id, label: id }))
  const move = (foil: Foil, to: string) =>
    act(`Give foil ${foil.mapNumber} mix ${to}`, changeSection(foil.id, { treatment: { mix: to } }))
  return (
    <details>
      <summary>Move a foil to another mix</summary>
      <ul className="mix-foils">
        {foils.map((foil) => (
          <li key={foil.id}>
            <Choices
              legend={`Foil ${foil.mapNumber}: ${kindWords[foil.kind].toLowerCase()}, ${whereOf(foil, headOf(plan))}`}
              options={letters}
              value={foil.mix}
              onChange={(to) => move(foil, to)}
            />
          </li>
        ))}
      </ul>
    </details>
  )
}
