import { sessionStore } from "../plan/sessionStore"
import { useSession } from "../plan/usePlan"

/** How this hand works: a pen that draws while fingers move the page, and the tools on the other side. */
export function HandSwitches() {
  const penOnly = useSession((session) => session.penOnly)
  const leftHanded = useSession((session) => session.leftHanded)
  return (
    <fieldset className="switches">
      <legend>Hand</legend>
      <div className="choices">
        <Switch
          label="Left-handed"
          on={leftHanded}
          onChange={(on) => sessionStore.setState({ leftHanded: on })}
        />
        <Switch label="Pen only" on={penOnly} onChange={(on) => sessionStore.setState({ penOnly: on })} />
      </div>
    </fieldset>
  )
}

type SwitchProps = { label: string; on: boolean; onChange: (on: boolean) => void }

const Switch = ({ label, on, onChange }: SwitchProps) => (
  <label>
    <input type="checkbox" checked={on} onChange={(event) => onChange(event.target.checked)} />
    <span>{label}</span>
  </label>
)
