import { useState } from "react"
import type { HeadSize } from "../../geometry/head/headSize"
import { startingHeadSize } from "../../presets/headSizes"
import { act } from "../plan/act"
import { setHead } from "../plan/edits/setHead"
import { headOf } from "../plan/measured"
import { usePlan } from "../plan/usePlan"
import { CaliperFields } from "./CaliperFields"
import { Choices } from "./Choices"
import { isAverage, toCaliper, toTape } from "./headSizeChoices"
import { TapeFields } from "./TapeFields"

type Way = "average" | "tape" | "caliper"

const ways: readonly { value: Way; label: string }[] = [
  { value: "average", label: "Average" },
  { value: "tape", label: "By tape" },
  { value: "caliper", label: "By caliper" },
]

/** How large the head is: an average, three tape measures, or three caliper measures. */
export function HeadSizeFields() {
  const size = usePlan((plan) => plan.head.size)
  const surface = usePlan((plan) => headOf(plan).surface)
  const [wantsCaliper, setWantsCaliper] = useState(false)
  const way = isAverage(size) && !wantsCaliper ? "average" : size.kind

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
      {way === "average" && <AverageWords size={toTape(surface)} />}
      {way === "tape" && size.kind === "tape" && (
        <TapeFields size={size} onCommit={(part) => resize("Change the head size", { ...size, ...part })} />
      )}
      {way === "caliper" && size.kind === "caliper" && (
        <CaliperFields
          size={size}
          onCommit={(part) => resize("Change the head size", { ...size, ...part })}
        />
      )}
    </section>
  )
}

const resize = (label: string, size: HeadSize) => act(label, setHead({ size }))

const AverageWords = ({ size }: { size: ReturnType<typeof toTape> }) => (
  <p className="aside">
    As a woman of mean size: a tape reads {size.aroundMm / 10} cm around, {size.overMm / 10} cm over the top,{" "}
    {size.frontToNapeMm / 10} cm from front to nape. Measure to fit the client.
  </p>
)
