import type { DirectionName } from "../../geometry/direction"
import { partingLengthMm } from "../../geometry/reshapeParting"
import type { Section } from "../../geometry/section/section"
import { act } from "../plan/act"
import { behindMmOf, setAngle, setBehind, setDirection, setLength } from "../plan/edits/shapeParting"
import { setStartAlong, startAlong } from "../plan/edits/startAlong"
import { limits } from "../plan/limits"
import { headOf } from "../plan/measured"
import type { Plan } from "../plan/schema"
import { directionIn } from "../plan/words"
import { Choices } from "./Choices"
import { NumberField } from "./NumberField"

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
          onCommit={(mm) => act("Move behind the hairline", setBehind(id, mm))}
        />
        <NumberField
          name={`From centre front, ${start.side}`}
          unit="mm"
          value={tenth(start.mm)}
          range={{ low: 0, high: Math.floor(head.hairline.sides[start.side].lengthMm) }}
          onCommit={(mm) => act("Move along the hairline", setStartAlong(id, mm))}
        />
        <NumberField
          name="Length"
          unit="mm"
          value={tenth(partingLengthMm(head, parting))}
          range={limits.partingMm}
          onCommit={(mm) => act("Change length", setLength(id, mm))}
        />
        <NumberField
          name="Angle"
          unit="°"
          value={Math.round(degrees)}
          range={{ low: 0, high: 90 }}
          step={5}
          onCommit={(angle) => act("Turn", setAngle(id, angle))}
        />
      </div>
      <Choices
        legend="Runs"
        options={directions}
        value={name}
        onChange={(wanted) => act(`Turn ${wanted}`, setDirection(id, wanted))}
      />
    </>
  )
}
