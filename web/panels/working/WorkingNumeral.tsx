import { inks } from "../../plan/inks"
import type { WorkingSection } from "../../plan/workingSections"

/** The number of a working section on its wash, ringed as on the map. */
export const WorkingNumeral = ({ working: { numeral, tint } }: { working: WorkingSection }) => (
  <span className="numeral" style={{ backgroundColor: inks[tint].color }}>
    {numeral}
  </span>
)
