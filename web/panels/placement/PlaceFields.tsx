import { partingLengthMm } from "../../../geometry/placing/reshapeParting"
import type { Section } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import {
  behindMmOf,
  setAngle,
  setBehind,
  setDirection,
  setLength,
} from "../../core/edits/parting/shapeParting"
import { setStartAlong, startAlong } from "../../core/edits/parting/startAlong"
import { limits } from "../../core/fields/limits"
import { headOf } from "../../core/figures/measured"
import { directionIn } from "../../core/placement/places"
import { commit } from "../../session/commit"
import { useWords } from "../../session/words"
import { Choices } from "../fields/Choices"
import { NumberField } from "../fields/NumberField"
import { namedOptions } from "../fields/options"

const tenth = (value: number) => Math.round(value * 10) / 10

/** Where a parting lies, how long it is and how it runs: each to be typed. */
export function PlaceFields({ section, plan }: { section: Section; plan: Plan }) {
  const { common, placement } = useWords()
  const w = placement.editor
  const { mm } = common.units
  const head = headOf(plan)
  const { id, parting } = section
  const start = startAlong(parting, head)
  const { name, degrees } = directionIn(section, head)
  return (
    <>
      <div className="pairs">
        <NumberField
          name={w.behindHairline}
          unit={mm}
          value={tenth(behindMmOf(parting, head))}
          range={{ ...limits.behindMm, low: 0 }}
          onCommit={(behind) => commit({ chapter: "placement", code: "set-behind" }, setBehind(id, behind))}
        />
        <NumberField
          name={w.fromCentreFront(start.side)}
          unit={mm}
          value={tenth(start.mm)}
          range={{ low: 0, high: Math.floor(head.hairline.sides[start.side].lengthMm) }}
          onCommit={(along) => commit({ chapter: "placement", code: "set-along" }, setStartAlong(id, along))}
        />
        <NumberField
          name={w.length}
          unit={mm}
          value={tenth(partingLengthMm(head, parting))}
          range={limits.partingMm}
          onCommit={(length) => commit({ chapter: "placement", code: "set-length" }, setLength(id, length))}
        />
        <NumberField
          name={w.angle}
          unit={common.units.degrees}
          value={Math.round(degrees)}
          range={{ low: 0, high: 90 }}
          step={5}
          onCommit={(angle) => commit({ chapter: "placement", code: "set-angle" }, setAngle(id, angle))}
        />
      </div>
      <Choices
        legend={w.runs}
        options={namedOptions(common.directions, common)}
        value={name}
        onChange={(direction) =>
          commit({ chapter: "placement", code: "set-direction", direction }, setDirection(id, direction))
        }
      />
    </>
  )
}
