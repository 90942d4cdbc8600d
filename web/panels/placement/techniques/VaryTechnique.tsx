import { stitches, stitchWords } from "../../../../presets/placement/foils"
import type {
  MeasureName,
  TechniqueParameters,
  TechniqueValues,
} from "../../../../presets/techniques/technique"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { MeasureSlider } from "./MeasureSlider"

type Props = {
  parameters: TechniqueParameters
  values: TechniqueValues
  onChange: (values: TechniqueValues) => void
}

const measures: readonly MeasureName[] = ["depthMm", "gapMm", "count"]

/** What may be varied before a technique is laid. */
export function VaryTechnique({ parameters, values, onChange }: Props) {
  const { placement, techniques: w } = useWords()
  const { ways } = parameters
  return (
    <section className="technique-vary" aria-label={w.panel.vary}>
      {ways && (
        <Choices
          legend={w.panel.way}
          options={ways.map((value) => ({ value, label: w.ways[value] }))}
          value={values.way}
          onChange={(way) => onChange({ ...values, way })}
        />
      )}
      {measures.map((name) => {
        const measure = parameters[name]
        return (
          measure && (
            <MeasureSlider
              key={name}
              measure={measure}
              isLength={name !== "count"}
              value={values[name]}
              onChange={(value) => onChange({ ...values, [name]: value })}
            />
          )
        )
      })}
      {parameters.stitch && (
        <Choices
          legend={w.panel.stitch}
          options={stitchWords.map((value) => ({
            value,
            label: placement.editor.stitchOf(value, stitches[value].stitchMm.value),
          }))}
          value={values.stitch}
          onChange={(stitch) => onChange({ ...values, stitch })}
        />
      )}
    </section>
  )
}
