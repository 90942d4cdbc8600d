import { act } from "../../plan/act"
import type { Closest } from "../../service/closestTogether"
import { cureEdit } from "../../service/cureEdit"
import type { Service } from "../../service/scheduleInput"

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
      <button type="button" className="button" onClick={() => act(cure.label, cureEdit(cure, service))}>
        {cure.label}
      </button>
    </div>
  )
}
