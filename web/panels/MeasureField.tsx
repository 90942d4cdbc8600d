import type { Figure } from "../../presets/figure"
import type { Limit } from "../plan/limits"
import { NumberField } from "./NumberField"

type Props = {
  name: string
  /** How the measure is taken. */
  hint: string
  /** A tape is marked in cm, a caliper in mm. */
  unit: "cm" | "mm"
  mm: number
  limit: Limit
  usual: Figure
  onCommit: (mm: number) => void
}

/** One measure of the head, in the unit of the tool, with its usual span. */
export function MeasureField({ name, hint, unit, mm, limit, usual, onCommit }: Props) {
  const size = unit === "cm" ? 10 : 1
  const [low, high] = usual.range.map((end) => Math.round(end / size))
  return (
    <div className="measure">
      <NumberField
        name={name}
        unit={unit}
        value={mm / size}
        range={{ low: limit.low / size, high: limit.high / size }}
        step={unit === "cm" ? 0.5 : 1}
        onCommit={(value) => onCommit(Math.round(value * size * 10) / 10)}
      />
      <p className="aside">
        {unit === "cm" && `${Math.round(mm)} mm; `}usually {low} to {high} {unit}: {hint}
      </p>
    </div>
  )
}
