import type { Closest } from "../../core/fixes/closestTogether"
import { pieceOf } from "../../core/kinds/kindRecords"
import type { Service } from "../../core/schedule/scheduleInput"
import { useWords } from "../../session/words"
import { FixButton } from "./FixButton"

/** The order and the strengths with which all foils are ready closest together, where they are not yet. */
export function ClosestTogether({ closest, service }: { closest: Closest | null; service: Service }) {
  const w = useWords().timing
  if (!closest) return null
  return (
    <div className="search">
      <p>{w.closest(closest, pieceOf(service.foils))}</p>
      <FixButton fix={closest.cure} service={service} />
    </div>
  )
}
