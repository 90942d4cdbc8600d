import { mirror, type SurfacePath } from "../../../../geometry/surface/surfacePath"
import { fitStartLine } from "../../../../geometry/working/workingSectionStart"
import type { WorkingStart } from "../../../../presets/placement/workingSections"
import { validateDividers } from "../../checks/validateDividers"
import { type Edit, refuse } from "../../document/edit"
import type { Plan } from "../../document/schema"
import type { Divider } from "../../document/workingSectionsSchema"
import { headOf } from "../../figures/measured"
import { dividingOf } from "../../figures/workingSections"

/** Adds dividing partings after those that are there. */
export const addWorkingPartings =
  (...partings: readonly SurfacePath[]): Edit =>
  (plan) => {
    const { dividers } = dividingOf(plan)
    const free = freeNumber(dividers)
    const added = partings.map((parting, i) => ({ id: `d${free + i}`, parting }))
    return validateDividers(plan, [...dividers, ...added])
  }

/** The id that the next dividing parting gets. */
export const freeDividerId = (plan: Plan) => `d${freeNumber(dividingOf(plan).dividers)}`

/** A number above all in use: "d" and a number is what a dividing parting is called in the file. */
const freeNumber = (dividers: readonly Divider[]) =>
  Math.max(0, ...dividers.map(({ id }) => Number(/^d(\d{1,9})$/.exec(id)?.[1] ?? 0))) + 1

/** The same dividing parting on the other side of the head. */
export const mirrorWorkingParting =
  (id: string): Edit =>
  (plan) => {
    const divider = dividingOf(plan).dividers.find((each) => each.id === id)
    return divider ? addWorkingPartings(mirror(divider.parting))(plan) : plan
  }

/** Divides the head by one of the usual starts; what is divided so already is not parted twice. */
export const startWorkingSections =
  (start: WorkingStart): Edit =>
  (plan) => {
    const partings = start.lines.flatMap((line) => {
      const made = fitStartLine(headOf(plan), line)
      return "parting" in made ? [made.parting] : []
    })
    const missing = partings.filter((parting) => !isThere(parting, plan))
    if (partings.length < start.lines.length) return refuse({ code: "no-room-for-start", start: start.id })
    return missing.length > 0
      ? addWorkingPartings(...missing)(plan)
      : refuse({ code: "start-is-there", start: start.id })
  }

/** Nearer than this in the scalp map, radians, two lines of the same length are one: about 4 mm. */
const sameRadians = 0.05

function isThere(parting: SurfacePath, plan: Plan): boolean {
  const places = [0, 0.25, 0.5, 0.75, 1].map((share) => parting[Math.round(share * (parting.length - 1))])
  return dividingOf(plan).dividers.some((divider) =>
    places.every(([u, v]) => divider.parting.some((at) => Math.hypot(at[0] - u, at[1] - v) < sameRadians)),
  )
}
