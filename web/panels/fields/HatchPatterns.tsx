import { mixColors } from "../../drawing/inks"
import { hatchSlants } from "../../drawing/sectionMarks"

export const hatchFill = (mix: number) => `url(#hatch-${mix % mixColors.length})`

/** The hatch of each mix, as on the map, for the fill of a bar. */
export const HatchPatterns = () => (
  <defs>
    {mixColors.map((color, mix) => (
      <pattern key={color} id={`hatch-${mix}`} patternUnits="userSpaceOnUse" width={9} height={20}>
        <rect width={9} height={20} fill={color} fillOpacity={0.18} />
        {hatchSlants[mix].map((slant) => (
          <path key={slant} d={strokes(slant)} stroke={color} strokeWidth={1.1} fill="none" />
        ))}
      </pattern>
    ))}
  </defs>
)

/** One stroke that leans as far as it does over a band 10 deep, repeated so that the tile closes on itself. */
function strokes(slant: number) {
  const lean = (slant * 9) / (Math.abs(slant) > 1 ? 2.5 : 1)
  const height = Math.abs(slant) > 1 ? 4 : 10
  const tiles = slant === 0 ? [0] : [-2, -1, 0, 1, 2]
  const rows = Array.from({ length: Math.ceil(20 / height) }, (_, row) => row)
  return rows
    .flatMap((row) =>
      tiles.map((tile) => {
        const x = 4.5 + tile * 9
        return `M${x} ${row * height}L${x + (slant === 0 ? 0 : lean)} ${(row + 1) * height}`
      }),
    )
    .join("")
}
