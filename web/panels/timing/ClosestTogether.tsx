import type { Closest } from "../../core/fixes/closestTogether"
import { fixEdit } from "../../core/fixes/fixEdit"
import type { Service } from "../../core/schedule/scheduleInput"
import { commit } from "../../session/commit"

/** The order and the strengths with which all foils are ready closest together, where they are not yet. */
export function ClosestTogether({ closest, service }: { closest: Closest | null; service: Service }) {
  if (!closest) return null
  const { cure, nowMin, thenMin } = closest
  return (
    <div className="search">
      <p>
        As it stands the foils are expected ready over {Math.round(nowMin)} minutes; in another order, or with
        weaker developer first, over {Math.round(thenMin)}.
      </p>
      <button type="button" className="button" onClick={() => commit(cure.label, fixEdit(cure, service))}>
        {cure.label}
      </button>
    </div>
  )
}
