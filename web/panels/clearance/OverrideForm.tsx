import { useState } from "react"
import { daysOf } from "../../core/cautions/asking/questions"
import type { Finding } from "../../core/cautions/cautions"
import { withOverride } from "../../core/cautions/overrides"
import { newConsultation, type Pass } from "../../core/document/consultation"
import { nowHere } from "../../session/nowHere"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { TextField } from "../fields/TextField"
import type { Settle } from "./settle"

/** What the colourist decides is overridden in writing, by someone with a name. */
export function OverrideForm({
  finding: { rule, mixes, about },
  settle,
}: {
  finding: Finding
  settle: Settle
}) {
  const { panel } = useWords().cautions
  const { passes } = usePlan((plan) => plan.consultation) ?? newConsultation()
  const date = usePlan((plan) => plan.date)
  const [pass, setPass] = useState<Pass>({
    rule,
    reason: "",
    by: "",
    ...(mixes && { mix: mixes[0] }),
    ...(about !== undefined && { about }),
  })
  const [isWanting, setWanting] = useState(false)
  const isWritten = pass.reason.trim() !== "" && pass.by.trim() !== ""
  const save = () => {
    const { today: on, visit } = daysOf({ date }, nowHere())
    settle("override", { passes: withOverride(passes, { ...pass, on, visit }) })
  }
  return (
    <details>
      <summary>{panel.override}</summary>
      <p className="aside">{panel.printed}</p>
      <div className="pairs">
        <TextField
          name={panel.reason}
          value={pass.reason}
          most={200}
          onCommit={(reason) => setPass({ ...pass, reason })}
        />
        <TextField name={panel.by} value={pass.by} most={40} onCommit={(by) => setPass({ ...pass, by })} />
      </div>
      <button type="button" className="button" onClick={() => (isWritten ? save() : setWanting(true))}>
        {panel.overrideThis}
      </button>
      {isWanting && !isWritten && (
        <p className="fault" role="alert">
          {panel.wanting}
        </p>
      )}
    </details>
  )
}
