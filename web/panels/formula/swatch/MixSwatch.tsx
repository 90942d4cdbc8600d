import { mixColors } from "../../../drawing/inks"
import { HatchPatterns, hatchFill } from "../../fields/HatchPatterns"

/** The hatches that the swatches of a page are filled with, once. */
export const SwatchHatches = () => (
  <svg width={0} height={0} className="unseen" aria-hidden="true">
    <HatchPatterns />
  </svg>
)

/** The hatch and colour of a mix as on the map, beside its letter. */
export const MixSwatch = ({ index }: { index: number }) => (
  <svg className="mix-swatch" viewBox="0 0 54 22" width={54} height={22} aria-hidden="true">
    <rect
      x={1}
      y={1}
      width={52}
      height={20}
      fill={hatchFill(index)}
      stroke={mixColors[index % mixColors.length]}
      strokeWidth={2}
    />
  </svg>
)
