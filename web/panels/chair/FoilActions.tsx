import { coatsOf, isFoil } from "../../../geometry/section/section"
import { type Holds, holdsMix } from "../../core/cautions/clearance"
import { onNow, rootsToCome } from "../../core/chair/chairRecord"
import type { Plan } from "../../core/document/schema"
import { pieceOf } from "../../core/kinds/kindRecords"
import { tap } from "../../session/chair/chairStore"
import { useService } from "../../session/chair/useChair"
import { useWords } from "../../session/words"
import { burningAt } from "./chairActions"
import { LookPad } from "./LookPad"

type Props = {
  foil: string | null
  plan: Plan
  holds: Holds
  isLooking: boolean
  onLook: (looks: boolean) => void
  onDone: () => void
  onBurning: (foil: string) => void
}

/** What can be done with the foil that is chosen. A stop or an open question holds fresh product on it, and nothing else. */
export function FoilActions({ foil, plan, holds, isLooking, onLook, onDone, onBurning }: Props) {
  const number = useService((chair) => onNow(chair, foil)?.mapNumber)
  const roots = useService((chair) => rootsToCome(chair).find(({ id }) => id === foil)?.rootsLater?.mix)
  const piece = useService((chair) => pieceOf(chair.foils.filter(({ id }) => id === foil)))
  const all = useService(({ foils }) => pieceOf(foils)) ?? "foil"
  const w = useWords().chair.floor
  if (!foil || !number) return <p className="large hint">{w.tapFoil(all)}</p>
  const name = w.foilName(number, piece ?? "foil")
  if (isLooking)
    return (
      <LookPad
        key={foil}
        foil={foil}
        name={name}
        plan={plan}
        onBurning={onBurning}
        onClose={() => {
          onLook(false)
          onDone()
        }}
      />
    )
  const drawn = plan.sections.filter(isFoil).find(({ id }) => id === foil)
  const isHeld = holdsMix(holds, ...(drawn ? coatsOf(drawn).map(({ mix }) => mix) : []))
  const did = (kind: "off" | "re-coated" | "roots-on" | "missed-roots-on") => {
    tap({ kind, foil })
    onDone()
  }
  return (
    <fieldset className="touches">
      <legend className="label">{name}</legend>
      {roots && (
        <>
          <button
            type="button"
            className="touch strong"
            disabled={holdsMix(holds, roots)}
            onClick={() => did("roots-on")}
          >
            {w.rootsOn}
          </button>
          <button type="button" className="touch" onClick={() => did("missed-roots-on")}>
            {w.rootsWentOnEarlier}
          </button>
        </>
      )}
      <button type="button" className="touch strong" onClick={() => onLook(true)}>
        {w.checked}
      </button>
      <button type="button" className="touch strong" onClick={() => did("off")}>
        {w.off}
      </button>
      <button type="button" className="touch" disabled={isHeld} onClick={() => did("re-coated")}>
        {w.reCoated}
      </button>
      <button type="button" className="touch red" onClick={() => burningAt(foil, null, onBurning)}>
        {w.burning}
      </button>
    </fieldset>
  )
}
