import { otherSide } from "../../geometry/placing/technique"
import type { TechniqueSection } from "./technique"

/** A section of a technique on the other side of the head. */
export const otherWay = (section: TechniqueSection): TechniqueSection => ({
  ...section,
  parting: otherSide(section.parting),
})
