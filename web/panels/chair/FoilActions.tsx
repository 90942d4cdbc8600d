import { onNow } from "../../core/chair/chairRecord"
import type { Plan } from "../../core/document/schema"
import { tap } from "../../session/chair/chairStore"
import { useService } from "../../session/chair/useChair"
import { LookPad } from "./LookPad"

type Props = {
  foil: string | null
  plan: Plan
  isLooking: boolean
  onLook: (looks: boolean) => void
  onDone: () => void
}

/** What can be done with the foil that is chosen. */
export function FoilActions({ foil, plan, isLooking, onLook, onDone }: Props) {
  const name = useService((chair) => onNow(chair, foil)?.name)
  if (!foil || !name) return <p className="large hint">Touch a foil to say what you did with it.</p>
  if (isLooking)
    return (
      <LookPad
        key={foil}
        foil={foil}
        name={name}
        plan={plan}
        onClose={() => {
          onLook(false)
          onDone()
        }}
      />
    )
  const did = (kind: "off" | "re-coated") => {
    tap({ kind, foil })
    onDone()
  }
  return (
    <fieldset className="touches">
      <legend className="label">{name}</legend>
      <button type="button" className="touch strong" onClick={() => onLook(true)}>
        Looked
      </button>
      <button type="button" className="touch strong" onClick={() => did("off")}>
        Off
      </button>
      <button type="button" className="touch" onClick={() => did("re-coated")}>
        Re-coated
      </button>
    </fieldset>
  )
}
