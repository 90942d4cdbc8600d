import type { WorkingSection } from "../../../core/figures/workingSections"
import { inks, tintOf } from "../../../drawing/inks"

/** The number of a working section on its wash, ringed as on the map. */
export const WorkingNumeral = ({ working: { numeral, place } }: { working: WorkingSection }) => (
  <span className="numeral" style={{ backgroundColor: inks[tintOf(place)].color }}>
    {numeral}
  </span>
)
