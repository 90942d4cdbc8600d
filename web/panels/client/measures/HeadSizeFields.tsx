import { useMemo, useState } from "react"
import { useStore } from "zustand"
import { tapeContradiction } from "../../../../geometry/scalp/fit"
import type { HeadSize } from "../../../../geometry/scalp/headSize"
import { headFigures, startingHeadSize } from "../../../../presets/client/headSizes"
import { setHead } from "../../../core/edits/plan/setHead"
import { headOf } from "../../../core/figures/measured"
import { commit } from "../../../session/commit"
import { chooseUnits, type MeasureUnits, measureUnits } from "../../../session/measureUnits"
import { usePlan } from "../../../session/usePlan"
import { type Done, useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { labelledOptions } from "../../fields/options"
import { isAverage, toCaliper, toTape } from "./headSizeChoices"
import { measuresOf } from "./headSizeMeasures"
import { MeasureField, type MeasureUnit, measureText, unitWord } from "./MeasureField"

type Way = "average" | "tape" | "caliper"

/** How large the head is: an average, three tape measures, or three caliper measures. */
export function HeadSizeFields() {
  const { head: said } = useWords().client
  const size = usePlan((plan) => plan.head.size)
  const surface = usePlan((plan) => headOf(plan).surface)
  const [wantsCaliper, setWantsCaliper] = useState(false)
  const way = isAverage(size) && !wantsCaliper ? "average" : size.kind

  const contradiction = useMemo(() => tapeContradiction(size, headFigures), [size])
  const { units } = useStore(measureUnits)
  const unit = units === "inches" ? "in" : way === "caliper" ? "mm" : "cm"

  const choose = (next: Way) => {
    setWantsCaliper(next === "caliper")
    if (next === "average") resize("average-head", startingHeadSize)
    else if (next === "tape") resize("tape-head", toTape(surface))
    else if (size.kind === "tape") resize("caliper-head", toCaliper(surface))
  }
  return (
    <section aria-labelledby="size-title">
      <h2 id="size-title">{said.size}</h2>
      <Choices
        legend={said.measured}
        options={labelledOptions<Way>(said.ways)}
        value={way}
        onChange={choose}
      />
      <Choices
        legend={said.units}
        options={labelledOptions<MeasureUnits>(said.unitNames)}
        value={units}
        onChange={chooseUnits}
      />
      {way === "average" ? (
        <AverageWords size={toTape(surface)} unit={unit} />
      ) : (
        <div className="measures">
          {measuresOf(size).map((measure) => (
            <MeasureField
              key={measure.key}
              measure={measure}
              unit={unit}
              onCommit={(mm) => resize("set-head-size", measure.resized(mm))}
            />
          ))}
        </div>
      )}
      {contradiction && (
        <p className="fault" role="status">
          {said.contradicts({
            name: said.measures[contradiction.which].name,
            byMm: contradiction.byMm,
          })}
        </p>
      )}
    </section>
  )
}

type Resized = Extract<Done, { chapter: "client" }>["code"] & `${string}head${string}`

const resize = (code: Resized, size: HeadSize) => commit({ chapter: "client", code }, setHead({ size }))

type AverageProps = { size: ReturnType<typeof toTape>; unit: MeasureUnit }

function AverageWords({ size, unit }: AverageProps) {
  const { client, common } = useWords()
  const [around, over, frontToNape] = measuresOf(size).map(
    ({ mm }) => `${measureText(mm, unit)} ${unitWord(unit, common)}`,
  )
  return <p className="aside">{client.head.average(around, over, frontToNape)}</p>
}
