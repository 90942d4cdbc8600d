import { cleanParting, type Parted } from "../../../../geometry/parting/parting"
import type { HeadSide } from "../../../../geometry/scalp/hairline"
import type { Head } from "../../../../geometry/scalp/head"
import type { SurfacePath } from "../../../../geometry/surface/surfacePath"
import { type Edit, refuse } from "../../document/edit"
import { movedAlong } from "./moveSections"
import { reshape } from "./shapeParting"

/** Where a parting starts, mm along the hairline from the centre front and on which side; it starts at its end nearer to the centre front. */
export function startAlong(parting: SurfacePath, head: Head): { mm: number; side: HeadSide } {
  const start = startIn(parting, head)
  return { mm: Math.abs(start), side: start < 0 ? "left" : "right" }
}

/** Moves a section along the hairline, on its own side, until it starts so far from the centre front. */
export const setStartAlong = (id: string, wantedMm: number): Edit =>
  reshape(id, (parting, head) => {
    const { side } = startAlong(parting, head)
    const wanted = side === "left" ? -wantedMm : wantedMm
    const made = movedTo(parting, wanted, head)
    if ("parting" in made && Math.abs(startIn(made.parting, head) - wanted) < 0.5) return made.parting
    return refuse({ code: "no-start-along", side, wantedMm })
  })

/** A place behind the hairline answers a step along it with a little more or less, so it is come nearer to by steps. */
function movedTo(parting: SurfacePath, wanted: number, head: Head): Parted {
  const start = startOf(endsAlong(parting, head))
  let stepMm = 0
  let made: Parted = { parting: [...parting] }
  for (let i = 0; i < 8 && "parting" in made; i++) {
    const offMm = wanted - endsAlong(made.parting, head)[start]
    if (Math.abs(offMm) < 0.03) break
    stepMm += offMm
    made = cleanParting(head, movedAlong(head, parting, stepMm))
  }
  return made
}

/** How far along the hairline both ends of a parting lie, mm; to the left negative. */
const endsAlong = (parting: SurfacePath, { hairline }: Head) =>
  [parting[0], parting[parting.length - 1]].map((at) => hairline.coordinates(at).alongMm)

function startIn(parting: SurfacePath, head: Head) {
  const ends = endsAlong(parting, head)
  return ends[startOf(ends)]
}

const startOf = ([first, last]: readonly number[]) => (Math.abs(first) <= Math.abs(last) ? 0 : 1)
