import { useState } from "react"
import { useStore } from "zustand"
import type { HeadSize } from "../../../geometry/scalp/headSize"
import { startingHeadSize } from "../../../presets/client/headSizes"
import { setHead } from "../../core/edits/plan/setHead"
import { headOf } from "../../core/figures/measured"
import { commit } from "../../session/commit"
import { chooseUnits, type MeasureUnits, measureUnits } from "../../session/measureUnits"
import { usePlan } from "../../session/usePlan"
import { Choices } from "../fields/Choices"
import { measuresOf } from "../fields/headSizeMeasures"
import { MeasureField, type MeasureUnit, measureText } from "../fields/MeasureField"
import { isAverage, toCaliper, toTape } from "./headSizeChoices"

type Way = "average" | "tape" | "caliper"

const ways: readonly { value: Way; label: string }[] = [
  { value: "average", label: "Average" },
  { value: "tape", label: "By tape" },
  { value: "caliper", label: "By caliper" },
]

const unitOptions: readonly { value: MeasureUnits; label: string }[] = [
  { value: "metric", label: "Metric" },
  { value: "inches", label: "Inches" },
]

/** How large the head is: an average, three tape measures, or three caliper measures. */
export function HeadSizeFields() {
  const size = usePlan((plan) => plan.head.size)
  const surface = usePlan((plan) => headOf(plan).surface)
  const [wantsCaliper, setWantsCaliper] = useState(false)
  const way = isAverage(size) && !wantsCaliper ? "average" : size.kind

  const { units } = useStore(measureUnits)
  const unit = units === "inches" ? "in" : way === "caliper" ? "mm" : "cm"

  const choose = (next: Way) => {
    setWantsCaliper(next === "caliper")
    if (next === "average") resize("Use an average head", startingHeadSize)
    else if (next === "tape") resize("Measure the head by tape", toTape(surface))
    else if (size.kind === "tape") resize("Measure the head by caliper", toCaliper(surface))
  }
  return (
    <section aria-labelledby="size-title">
      <h2 id="size-title">Head size</h2>
      <Choices legend="Measured" options={ways} value={way} onChange={choose} />
      <Choices legend="Units" options={unitOptions} value={units} onChange={chooseUnits} />
      {way === "average" ? (
        <AverageWords size={toTape(surface)} unit={unit} />
      ) : (
        <div className="measures">
          {measuresOf(size).map((measure) => (
            <MeasureField
              key={measure.key}
              measure={measure}
              unit={unit}
              onCommit={(mm) => resize("Change the head size", measure.resized(mm))}
            />
          ))}
        </div>
      )}
    </section>
  )
}

const resize = (label: string, size: HeadSize) => commit(label, setHead({ size }))

type AverageProps = { size: ReturnType<typeof toTape>; unit: MeasureUnit }

function AverageWords({ size, unit }: AverageProps) {
  const [around, over, frontToNape] = measuresOf(size).map(({ mm }) => `${measureText(mm, unit)} ${unit}`)
  return (
    <p className="aside">
      As a woman of mean size: a tape reads {around} around, {over} over the top, {frontToNape} from front to
      nape. Measure to fit the client.
    </p>
  )
}
