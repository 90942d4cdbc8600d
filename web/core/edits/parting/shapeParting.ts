import { bearingOf, type DirectionName, plainDirection } from "../../../../geometry/parting/direction"
import {
  parallelParting,
  partingLengthMm,
  stretchParting,
  turnParting,
} from "../../../../geometry/placing/reshapeParting"
import type { Head } from "../../../../geometry/scalp/head"
import type { Section } from "../../../../geometry/section/section"
import type { SurfacePath } from "../../../../geometry/surface/surfacePath"
import { type Edit, refuse } from "../../document/edit"
import type { Refusal } from "../../document/refusal"
import { headOf } from "../../figures/measured"
import { replaceSections } from "../sections/replaceSections"
import { movedBack } from "./moveSections"

/** Changes of one parting by typed values. */

type Reshape = (parting: SurfacePath, head: Head, section: Section) => SurfacePath | Refusal

/** One section's parting made another, and its twin's with it. */
export const reshape =
  (id: string, change: Reshape): Edit =>
  (plan) => {
    const section = plan.sections.find((each) => each.id === id)
    if (!section) return plan
    const made = change(section.parting, headOf(plan), section)
    return "refused" in made ? made : replaceSections([id], (each) => ({ ...each, parting: made }))(plan)
  }

/** How far behind the hairline the middle of a parting lies, mm. */
export const behindMmOf = (parting: SurfacePath, head: Head) =>
  head.hairline.coordinates(parting[parting.length >> 1]).behindMm

/** Moves a section until the middle of its parting lies so far behind the hairline. */
export const setBehind = (id: string, behindMm: number): Edit =>
  reshape(id, (parting, head) => {
    let moved = parting
    for (let i = 0; i < 4 && moved.length > 1; i++)
      moved = movedBack(head, moved, behindMm - behindMmOf(moved, head))
    return moved.length > 1 && Math.abs(behindMmOf(moved, head) - behindMm) < 0.5
      ? moved
      : refuse({ code: "no-place-behind", behindMm })
  })

/** Makes a parting longer or shorter, by as much at each end. */
export const setLength = (id: string, wantedMm: number): Edit =>
  reshape(id, (parting, head) => {
    const made = stretchParting(head, parting, wantedMm)
    if ("refused" in made) return refuse({ code: "never-so-long", wantedMm })
    const madeMm = partingLengthMm(head, made.parting)
    return madeMm > wantedMm - 1
      ? made.parting
      : refuse({ code: "only-so-long", madeMm: Math.floor(madeMm), wantedMm })
  })

/** Turns a parting about its middle to an angle from the horizontal, degrees; it goes on dropping the way it did. */
export const setAngle = (id: string, degrees: number): Edit =>
  reshape(id, (parting, head) => {
    const bearing = bearingOf(head.surface, parting[0], parting[parting.length - 1])
    return turned(parting, head, bearing <= 90 ? degrees : 180 - degrees)
  })

/** The bearings at which a direction is looked for; both diagonals are tried, since the side of the head decides. */
const bearings: Record<Exclude<DirectionName, "parallel to hairline">, readonly number[]> = {
  horizontal: [0],
  vertical: [90],
  "diagonal forward": [45, 135],
  "diagonal back": [45, 135],
}

/** Turns a parting about its middle to one of the trade's directions. */
export const setDirection = (id: string, name: DirectionName): Edit =>
  reshape(id, (parting, head) => {
    if (name === "parallel to hairline") {
      const made = parallelParting(head, parting)
      return "refused" in made ? refuse({ code: "off-hairline" }) : made.parting
    }
    const tries = bearings[name].map((bearing) => turned(parting, head, bearing))
    const made = tries.find(
      (each) =>
        !("refused" in each) && plainDirection(head.surface, each[0], each[each.length - 1]).name === name,
    )
    return (
      made ?? tries.find((each) => "refused" in each) ?? refuse({ code: "no-direction", direction: name })
    )
  })

/** Turned, and made as long as it was: the head is no ball, and a turn stretches a line by a little. */
function turned(parting: SurfacePath, head: Head, bearing: number): SurfacePath | Refusal {
  const degrees = Math.round(Math.min(bearing, 180 - bearing))
  const wantedMm = partingLengthMm(head, parting)
  const turnedLine = turnParting(head, parting, bearing)
  if (!turnedLine) return refuse({ code: "no-angle", degrees })
  const made = stretchParting(head, turnedLine, wantedMm)
  return "parting" in made && partingLengthMm(head, made.parting) > wantedMm - 1
    ? made.parting
    : refuse({ code: "angle-leaves-hair", degrees })
}
