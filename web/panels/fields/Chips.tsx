type Props<Value extends string> = {
  legend: string
  options: readonly { value: Value; label: string }[]
  chosen: readonly Value[]
  onChange: (chosen: readonly Value[]) => void
}

/** Some of a few words, side by side: as many as hold. */
export function Chips<Value extends string>({ legend, options, chosen, onChange }: Props<Value>) {
  return (
    <fieldset>
      <legend>{legend}</legend>
      <div className="choices">
        {options.map(({ value, label }) => (
          <label key={value}>
            <input
              type="checkbox"
              checked={chosen.includes(value)}
              onChange={({ target }) =>
                onChange(target.checked ? [...chosen, value] : chosen.filter((each) => each !== value))
              }
            />
            <span>{label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
