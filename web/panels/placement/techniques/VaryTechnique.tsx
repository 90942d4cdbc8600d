import { type StitchWord, stitches } from "../../../../presets/placement/foils"
import type {
  MeasureName,
  TechniqueParameters,
  TechniqueValues,
} from "../../../../presets/techniques/technique"
import { capital } from "../../../core/text/capital"
import { Choices } from "../../fields/Choices"
import { MeasureSlider } from "./MeasureSlider"

type Props = {
  parameters: TechniqueParameters
  values: TechniqueValues
  onChange: (values: TechniqueValues) => void
}

const units: Record<MeasureName, string> = { depthMm: "mm", gapMm: "mm", count: "" }
const measures = Object.keys(units) as MeasureName[]
const stitchWords = Object.keys(stitches) as StitchWord[]
const stitchOptions = stitchWords.map((value) => ({
  value,
  label: `${capital(value)}, ${stitches[value].stitchMm.value} mm`,
}))

/** What may be varied before a technique is laid. */
export function VaryTechnique({ parameters, values, onChange }: Props) {
  return (
    <section className="technique-vary" aria-label="Change before laying">
      {measures.map((name) => {
        const measure = parameters[name]
        return (
          measure && (
            <MeasureSlider
              key={name}
              measure={measure}
              unit={units[name]}
              value={values[name]}
              onChange={(value) => onChange({ ...values, [name]: value })}
            />
          )
        )
      })}
      {parameters.stitch && (
        <Choices
          legend="Stitch"
          options={stitchOptions}
          value={values.stitch}
          onChange={(stitch) => onChange({ ...values, stitch })}
        />
      )}
    </section>
  )
}
