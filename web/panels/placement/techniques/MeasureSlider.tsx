import { useId } from "react"
import type { Measure } from "../../../../presets/techniques/technique"

import { useWords } from "../../../session/words"

type Props = { measure: Measure; isLength: boolean; value: number; onChange: (value: number) => void }

/** A measure that may be varied within its span: by finger, or by the arrows. */
export function MeasureSlider({ measure, isLength, value, onChange }: Props) {
  const id = useId()
  const { common, techniques: w } = useWords()
  const { label, range, step, value: usual } = measure
  const words = (amount: number) =>
    isLength ? common.figures.mm(amount, 1) : common.figures.number(amount, 1)
  return (
    <div className="field measure-slider">
      <label className="name" htmlFor={id}>
        {w.measures[label]}
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
        {w.panel.span({ low: words(range[0]), high: words(range[1]), usual: words(usual) })}
      </small>
    </div>
  )
}
