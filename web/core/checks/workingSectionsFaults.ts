import { crossesItself } from "../../../geometry/surface/crossesItself"
import type { SurfacePoint } from "../../../geometry/surface/frames"
import { areaElement } from "../../../geometry/surface/surfacePatch"
import { lengthMm, type SurfacePath } from "../../../geometry/surface/surfacePath"
import { mapArea } from "../../../geometry/working/workingSectionFaces"
import { reachMm } from "../../../geometry/working/workingSectionLine"
import { refuse } from "../document/edit"
import type { Refusal } from "../document/refusal"
import type { Plan } from "../document/schema"
import type { DividerFaultCode, Problem } from "../fields/problem"
import { headOf } from "../figures/measured"
import { dividingOf, divisionOf } from "../figures/workingSections"
import type { PartingFault } from "./partingFault"
import { problemAt } from "./problem"

const shortestMm = 4
/** Less than this is nobody's working section, cm2: two partings lie on one another. */
const leastAreaCm2 = 1

/** What makes a dividing parting no parting that divides, with its cure; null when it is in order. */
export function dividerFault(index: number, plan: Plan): PartingFault | null {
  const { parting } = dividingOf(plan).dividers[index]
  const whole = (fault: DividerFaultCode) => ({ point: null, fault })
  const long = lengthMm(headOf(plan).surface, parting)
  if (long < shortestMm) return whole({ code: "divider-too-short", leastMm: shortestMm, foundMm: long })
  if (crossesItself(parting)) return whole({ code: "divider-crosses-itself" })
  const twin = twinOf(index, plan)
  if (twin !== null) return whole({ code: "divider-on-another", number: twin + 1 })
  const { path, looseMm } = divisionOf(plan).dividers[index]
  if (path.length === 0) return whole({ code: "divider-divides-nothing" })
  const loose = looseMm.findIndex((mm) => mm > reachMm)
  if (loose >= 0)
    return {
      point: loose === 0 ? 0 : parting.length - 1,
      fault: { code: "divider-past-edge", pastMm: looseMm[loose] },
    }
  return (
    sliverFault(index, plan) ??
    (index === dividingOf(plan).dividers.length - 1 && !addsUp(plan)
      ? whole({ code: "divider-touches-another" })
      : null)
  )
}

/** Lines nearer than this, radians of the map, cannot be parted from one another: about 2 mm. */
const oneLine = 0.026
/** So many places of a line are looked at. */
const looks = 16

/** The dividing parting before this one that most of it lies on; null when there is none. */
function twinOf(index: number, plan: Plan): number | null {
  const { dividers } = dividingOf(plan)
  const { parting } = dividers[index]
  const places = Array.from(
    { length: looks },
    (_, i) => parting[Math.round((i / (looks - 1)) * (parting.length - 1))],
  )
  const twin = dividers.slice(0, index).findIndex((other) => {
    const near = places.filter((at) => mapDistanceTo(other.parting, at) < oneLine)
    return near.length > looks / 2
  })
  return twin < 0 ? null : twin
}

/** How far a place lies from a line in the scalp map, radians. */
function mapDistanceTo(line: SurfacePath, [u, v]: SurfacePoint): number {
  let least = Infinity
  for (let i = 1; i < line.length; i++) {
    const [[fromU, fromV], [toU, toV]] = [line[i - 1], line[i]]
    const [du, dv] = [toU - fromU, toV - fromV]
    const share = ((u - fromU) * du + (v - fromV) * dv) / (du * du + dv * dv || 1)
    const t = Math.max(0, Math.min(1, share))
    least = Math.min(least, Math.hypot(u - fromU - t * du, v - fromV - t * dv))
  }
  return least
}

/** Whether the areas make up the whole scalp; lines that touch without crossing can leave some of it in none. */
function addsUp(plan: Plan): boolean {
  const whole = Math.abs(mapArea(headOf(plan).hairline.points))
  const sum = divisionOf(plan).areas.reduce((total, { ring }) => total + mapArea(ring), 0)
  return Math.abs(sum - whole) < 0.005 * whole
}

function sliverFault(index: number, plan: Plan): PartingFault | null {
  const { surface } = headOf(plan)
  const areas = divisionOf(plan).areas.filter(({ dividers }) => Math.max(-1, ...dividers) === index)
  const cm2 = Math.min(...areas.map(({ ring }) => (mapArea(ring) * areaElement(surface, ring[0])) / 100))
  return cm2 < leastAreaCm2
    ? {
        point: null,
        fault: { code: "working-section-too-small", leastCm2: leastAreaCm2, foundCm2: cm2 },
      }
    : null
}

/** The first fault of a plan's dividing partings; null when all are in order. */
export function dividersFault(plan: Plan): Refusal | null {
  for (const [index] of dividingOf(plan).dividers.entries()) {
    const fault = dividerFault(index, plan)
    if (fault)
      return refuse({ code: "divider-problem", divider: index + 1, problem: problemAt([], fault.fault) })
  }
  return null
}

/** The faults of all dividing partings of a plan, where they stand in its file. */
export const dividerProblems = (plan: Plan): Problem[] =>
  dividingOf(plan).dividers.flatMap((_, index) => {
    const fault = dividerFault(index, plan)
    if (!fault) return []
    const place = [
      "workingSections",
      "dividers",
      index,
      "parting",
      ...(fault.point === null ? [] : [fault.point]),
    ]
    return [problemAt(place, fault.fault)]
  })
