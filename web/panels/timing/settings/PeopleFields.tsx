import type { TimingChoices } from "../../../core/document/timingChoices"
import { letters } from "../../../core/fields/limits"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { TextField } from "../../fields/TextField"
import type { ChangeTiming } from "./changeTiming"

type Props = { timing: TimingChoices; change: ChangeTiming }

/** Who works, and on which side the assistant does. */
export function PeopleFields({ timing, change }: Props) {
  const w = useWords().timing.settings
  const working = [
    { value: "1" as const, label: w.alone },
    { value: "2" as const, label: w.two },
  ]
  const sides = (["right", "left"] as const).map((value) => ({ value, label: w.sides[value] }))
  return (
    <>
      <Choices
        legend={w.working}
        options={working}
        value={timing.hands === 2 ? "2" : "1"}
        onChange={(value) => change("set-hands", { hands: value === "2" ? 2 : 1 })}
      />
      {timing.hands === 2 && (
        <Choices
          legend={w.assistantSide}
          options={sides}
          value={timing.assistantSide ?? "right"}
          onChange={(assistantSide) => change("set-side", { assistantSide })}
        />
      )}
      <Names timing={timing} change={change} />
    </>
  )
}

/** Names are asked for only so that each one's pace can be learnt. */
function Names({ timing: { people, hands }, change }: Props) {
  const w = useWords().timing.settings
  const [first = "", second = ""] = people ?? []
  const write = (...names: string[]) => change("set-people", { people: names.slice(0, hands) })
  return (
    <div className="with-fields">
      <TextField name={w.who} value={first} most={letters.name} onCommit={(name) => write(name, second)} />
      {hands === 2 && (
        <TextField
          name={w.assistant}
          value={second}
          most={letters.name}
          onCommit={(name) => write(first, name)}
        />
      )}
    </div>
  )
}
