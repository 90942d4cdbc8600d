import { useState } from "react"
import type { Plan } from "../../plan/schema"
import { recordsOf } from "../../service/chairRecord"
import { tap } from "./chairStore"
import { LookPad } from "./LookPad"
import { useService } from "./useChair"

type Props = { foil: string | null; plan: Plan; onDone: () => void }

/** What can be done with the foil that is chosen. */
export function FoilActions({ foil, plan, onDone }: Props) {
  const [isLooking, look] = useState(false)
  const name = useService((chair) => {
    const record = foil === null ? undefined : recordsOf(chair).get(foil)
    return record && record.onAtMs !== null && record.offAtMs === null ? record.name : null
  })
  if (foil === null || name === null)
    return <p className="large hint">Touch a foil to say what you did with it.</p>
  if (isLooking)
    return (
      <LookPad
        foil={foil}
        name={name}
        plan={plan}
        onClose={() => {
          look(false)
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
      <button type="button" className="touch strong" onClick={() => look(true)}>
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
