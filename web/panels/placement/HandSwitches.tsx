import { useEffect, useState } from "react"
import { sessionStore } from "../../session/sessionStore"
import { useSession } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { KeysDialog } from "../plans/KeysDialog"

/** How this hand works: tools on the other side, a pen that draws while fingers move the page, and what the keys do. */
export function HandSwitches() {
  const penOnly = useSession((session) => session.penOnly)
  const leftHanded = useSession((session) => session.leftHanded)
  const w = useWords().placement.toolRail
  const [isShowingKeys, showKeys] = useKeysSheet()
  return (
    <details className="switches">
      <summary>{w.hand}</summary>
      <div className="choices">
        <Switch
          label={w.leftHanded}
          on={leftHanded}
          onChange={(on) => sessionStore.setState({ leftHanded: on })}
        />
        <Switch label={w.penOnly} on={penOnly} onChange={(on) => sessionStore.setState({ penOnly: on })} />
        <button type="button" className="button" onClick={() => showKeys(true)}>
          {w.keys}
        </button>
      </div>
      {isShowingKeys && <KeysDialog onClose={() => showKeys(false)} />}
    </details>
  )
}

/** The sheet of keys opens on "?" wherever the focus is, save where one types. */
function useKeysSheet() {
  const [isOpen, setOpen] = useState(false)
  useEffect(() => {
    const onKey = ({ key, target }: KeyboardEvent) => {
      const isTyping =
        target instanceof HTMLElement &&
        target.matches("input[type=text], input[type=date], textarea, select")
      if (key === "?" && !isTyping) setOpen(true)
    }
    window.addEventListener("keydown", onKey)
    return () => window.removeEventListener("keydown", onKey)
  }, [])
  return [isOpen, setOpen] as const
}

type SwitchProps = { label: string; on: boolean; onChange: (on: boolean) => void }

const Switch = ({ label, on, onChange }: SwitchProps) => (
  <label>
    <input type="checkbox" checked={on} onChange={(event) => onChange(event.target.checked)} />
    <span>{label}</span>
  </label>
)
