import { headMeasureSources } from "../../../../presets/client/headSizes"
import { limits } from "../../../core/fields/limits"
import { useWords } from "../../../session/words"
import type { Words } from "../../../words/en/words"
import { NumberField } from "../../fields/NumberField"
import type { HeadMeasure } from "./headSizeMeasures"
import { inchParts, mmPerInch, readInches, writeInches } from "./inches"

/** A tape is marked in cm or inches, a caliper in mm or inches. */
export type MeasureUnit = "cm" | "mm" | "in"

const mmEach = { cm: 10, mm: 1, in: mmPerInch } as const satisfies Record<MeasureUnit, number>
const steps = { cm: 0.5, mm: 1, in: 1 / inchParts } as const satisfies Record<MeasureUnit, number>
const inchNotation = { write: writeInches, read: readInches, examples: "21 1/2, 21½ or 21.5" }

type Props = { measure: HeadMeasure; unit: MeasureUnit; onCommit: (mm: number) => void }

/** One measure of the head, in the unit of the tool, with its usual span. */
export function MeasureField({ measure: { key, mm }, unit, onCommit }: Props) {
  const { client, common } = useWords()
  const { name, hint } = client.head.measures[key]
  const size = mmEach[unit]
  const usual = headMeasureSources[key].range.map((end) => measureText(end, unit, 0))
  return (
    <div className="measure">
      <NumberField
        name={name}
        unit={unitWord(unit, common)}
        value={mm / size}
        range={rangeIn(unit, limits[key])}
        step={steps[unit]}
        notation={unit === "in" ? inchNotation : undefined}
        onCommit={(value) => onCommit(Math.round(value * size * 10) / 10)}
      />
      <p className="aside">{hint(usual[0], usual[1], unitWord(unit, common))}</p>
    </div>
  )
}

export const unitWord = (unit: MeasureUnit, { units }: Pick<Words["common"], "units">) =>
  ({ cm: units.cm, mm: units.mm, in: units.inches })[unit]

/** A measure as its tool reads it, without the unit; inches to an eighth. */
export const measureText = (mm: number, unit: MeasureUnit, decimals = 1) =>
  unit === "in" ? writeInches(mm / mmPerInch) : String(Number((mm / mmEach[unit]).toFixed(decimals)))

/** Limits in a unit, drawn in to what its marks can say, so that what is told can be typed. */
function rangeIn(unit: MeasureUnit, { low, high }: { low: number; high: number }) {
  const parts = unit === "in" ? inchParts : mmEach[unit]
  const perUnit = mmEach[unit]
  return {
    low: Math.ceil((low / perUnit) * parts) / parts,
    high: Math.floor((high / perUnit) * parts) / parts,
  }
}
