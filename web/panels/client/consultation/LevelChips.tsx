import { levels } from "../../../../presets/client/levels"
import { Choices } from "../../fields/Choices"

const options = levels.map(({ level }) => ({ value: String(level), label: String(level) }))

type Props = { legend: string; level: number | null; onChange: (level: number | null) => void }

/** A level of the scale 1 to 10, its name said once it is chosen. */
export function LevelChips({ legend, level, onChange }: Props) {
  const row = levels.find((each) => each.level === level)
  return (
    <div className="levels">
      <Choices
        legend={row ? `${legend}: ${row.level}, ${row.name}` : legend}
        options={options}
        value={level === null ? null : String(level)}
        onChange={(value) => onChange(Number(value))}
        onClear={() => onChange(null)}
      />
    </div>
  )
}
