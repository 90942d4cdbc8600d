import { levels } from "../../../../presets/client/levels"
import type { HairShade } from "../../../core/pigment/hairColour"
import { hexOf } from "../../../core/pigment/screenColour"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"

const optionsIn = (shade: (level: number) => HairShade) =>
  levels.map(({ level }) => ({
    value: String(level),
    label: String(level),
    mark: <i className="swatch" style={{ background: hexOf(shade(level)) }} />,
  }))

const options = {
  natural: optionsIn((level) => ({ kind: "natural", level, whiteShare: 0 })),
  lifted: optionsIn((level) => ({ kind: "lifted", level, toned: null })),
}

type Props = {
  legend: string
  level: number | null
  /** Hair as it is, or as lightener leaves it. */
  shown: keyof typeof options
  onChange: (level: number | null) => void
}

/** A level of the scale 1 to 10 with its colour from pigment, its name said once it is chosen. */
export function LevelChips({ legend, level, shown, onChange }: Props) {
  const { levelNamed } = useWords().client.hair
  return (
    <div className="levels">
      <Choices
        legend={level === null ? legend : levelNamed(legend, level)}
        options={options[shown]}
        value={level === null ? null : String(level)}
        onChange={(value) => onChange(Number(value))}
        onClear={() => onChange(null)}
      />
    </div>
  )
}
