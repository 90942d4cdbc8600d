import { useEffect, useId, useMemo, useState } from "react"
import { useLanguage, useWords } from "../../session/words"

type Notation = { write(value: number): string; read(text: string): number; examples: string }

type Props = {
  name: string
  unit: string
  value: number
  range: { low: number; high: number }
  step?: number
  /** How a number is written and read where it is not by decimals; `examples` tell it to who mistyped. */
  notation?: Notation | undefined
  /** Nothing is known yet: the field stays empty and `value` is where the arrows start. */
  isUnset?: boolean
  /** What an empty field means, where it means something; otherwise it is a fault. */
  onClear?: () => unknown
  /** Gives false when the value was refused: the field then shows the old one again. */
  onCommit: (value: number) => unknown
}

/** A number with its unit; what cannot be used is named with what can, and the old value stays. */
export function NumberField({
  name,
  unit,
  value,
  range,
  step = 1,
  notation,
  isUnset = false,
  onClear,
  onCommit,
}: Props) {
  const { common } = useWords()
  const id = useId()
  const language = useLanguage()
  const format = useMemo(() => notation?.write ?? decimalsIn(language), [notation, language])
  const [text, setText] = useState(isUnset ? "" : format(value))
  const [fault, setFault] = useState("")
  useEffect(() => {
    setText(isUnset ? "" : format(value))
    setFault("")
  }, [value, isUnset, format])

  const commit = () => {
    if (text.trim() === "" && (isUnset || onClear)) {
      setFault("")
      if (!isUnset) onClear?.()
      return
    }
    // A coarse notation writes less than is known: text left as it was written says nothing new.
    if (notation && !isUnset && text === format(value)) return setFault("")
    const wanted = (notation?.read ?? readDecimals)(text)
    if (text.trim() === "" || !Number.isFinite(wanted) || wanted < range.low || wanted > range.high) {
      const [low, high] = [format(range.low), format(range.high)]
      setFault(common.fields.expected({ name, low, high, unit, examples: notation?.examples ?? "" }))
      return
    }
    setFault("")
    if ((wanted === value && !isUnset) || onCommit(wanted) === false) setText(format(value))
  }

  return (
    <div className="field">
      <label className="name" htmlFor={id}>
        {name}
      </label>
      <span className="with-unit">
        <input
          id={id}
          type="text"
          inputMode={notation ? "text" : "decimal"}
          autoComplete="off"
          value={text}
          aria-invalid={fault !== ""}
          aria-describedby={fault ? `${id}-fault` : undefined}
          onChange={(event) => setText(event.target.value)}
          onBlur={commit}
          onKeyDown={(event) => {
            if (event.key === "Enter") commit()
            const move = { ArrowUp: step, ArrowDown: -step }[event.key]
            if (!move) return
            event.preventDefault()
            const moved = Math.min(range.high, Math.max(range.low, value + move))
            if (moved !== value) onCommit(Number(moved.toFixed(4)))
          }}
        />
        {unit}
      </span>
      {fault && (
        <span className="fault" id={`${id}-fault`}>
          {fault}
        </span>
      )}
    </div>
  )
}

const readDecimals = (text: string) => Number(text.trim().replace(",", "."))
/** Two decimals at most, as the language writes them; never -0. */
function decimalsIn(language: string) {
  const { format } = new Intl.NumberFormat(language, { useGrouping: false, maximumFractionDigits: 2 })
  return (value: number) => format(Number(value.toFixed(2)) || 0)
}
