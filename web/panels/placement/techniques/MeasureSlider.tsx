import { useId } from "react"
import type { Measure } from "../../../../presets/techniques/technique"

type Props = { measure: Measure; unit: string; value: number; onChange: (value: number) => void }

/** A measure that may be varied within its span: by finger, or by the arrows. */
export function MeasureSlider({ measure, unit, value, onChange }: Props) {
  const id = useId()
  const { name, range, step, value: usual } = measure
  const words = (amount: number) => `${Number(amount.toFixed(1))} ${unit}`.trimEnd()
  return (
    <div className="field measure-slider">
      <label className="name" htmlFor={id}>
        {name}
      </label>
      <output htmlFor={id}>{words(value)}</output>
      <input
        id={id}
        type="range"
        min={range[0]}
        max={range[1]}
        step={step}
        value={value}
        aria-valuetext={words(value)}
        aria-describedby={`${id}-span`}
        onChange={({ target }) => onChange(target.valueAsNumber)}
      />
      <small id={`${id}-span`}>
        {words(range[0])} to {words(range[1])}, usually {words(usual)}
      </small>
    </div>
  )
}
