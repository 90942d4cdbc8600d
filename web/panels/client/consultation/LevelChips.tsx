import { levelSwatches } from "../../../../presets/client/levelSwatches"
import { levels } from "../../../../presets/client/levels"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"

const options = levels.map(({ level }) => ({
  value: String(level),
  label: String(level),
  mark: <i className="swatch" style={{ background: levelSwatches[level] }} />,
}))

type Props = { legend: string; level: number | null; onChange: (level: number | null) => void }

/** A level of the scale 1 to 10 with a picture of it, its name said once it is chosen. */
export function LevelChips({ legend, level, onChange }: Props) {
  const { levelNamed } = useWords().client.hair
  return (
    <div className="levels">
      <Choices
        legend={level === null ? legend : levelNamed(legend, level)}
        options={options}
        value={level === null ? null : String(level)}
        onChange={(value) => onChange(Number(value))}
        onClear={() => onChange(null)}
      />
    </div>
  )
}
