import type { DirectionName } from "../../../geometry/parting/direction"
import { partingLengthMm } from "../../../geometry/placing/reshapeParting"
import type { Section } from "../../../geometry/section/section"
import { limits } from "../../core/document/limits"
import type { Plan } from "../../core/document/schema"
import {
  behindMmOf,
  setAngle,
  setBehind,
  setDirection,
  setLength,
} from "../../core/edits/parting/shapeParting"
import { setStartAlong, startAlong } from "../../core/edits/parting/startAlong"
import { headOf } from "../../core/figures/measured"
import { directionIn } from "../../core/text/words"
import { commit } from "../../session/commit"
import { Choices } from "../fields/Choices"
import { NumberField } from "../fields/NumberField"

const directions: readonly { value: DirectionName; label: string }[] = [
  { value: "parallel to hairline", label: "Parallel to hairline" },
  { value: "horizontal", label: "Horizontal" },
  { value: "diagonal forward", label: "Diagonal forward" },
  { value: "diagonal back", label: "Diagonal back" },
  { value: "vertical", label: "Vertical" },
]

const tenth = (value: number) => Math.round(value * 10) / 10

/** Where a parting lies, how long it is and how it runs: each to be typed. */
export function PlaceFields({ section, plan }: { section: Section; plan: Plan }) {
  const head = headOf(plan)
  const { id, parting } = section
  const start = startAlong(parting, head)
  const { name, degrees } = directionIn(section, head)
  return (
    <>
      <div className="pairs">
        <NumberField
          name="Behind the hairline"
          unit="mm"
          value={tenth(behindMmOf(parting, head))}
          range={{ ...limits.behindMm, low: 0 }}
          onCommit={(mm) => commit("Move behind the hairline", setBehind(id, mm))}
        />
        <NumberField
          name={`From centre front, ${start.side}`}
          unit="mm"
          value={tenth(start.mm)}
          range={{ low: 0, high: Math.floor(head.hairline.sides[start.side].lengthMm) }}
          onCommit={(mm) => commit("Move along the hairline", setStartAlong(id, mm))}
        />
        <NumberField
          name="Length"
          unit="mm"
          value={tenth(partingLengthMm(head, parting))}
          range={limits.partingMm}
          onCommit={(mm) => commit("Change length", setLength(id, mm))}
        />
        <NumberField
          name="Angle"
          unit="°"
          value={Math.round(degrees)}
          range={{ low: 0, high: 90 }}
          step={5}
          onCommit={(angle) => commit("Turn", setAngle(id, angle))}
        />
      </div>
      <Choices
        legend="Runs"
        options={directions}
        value={name}
        onChange={(wanted) => commit(`Turn ${wanted}`, setDirection(id, wanted))}
      />
    </>
  )
}
