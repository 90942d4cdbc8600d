import { type Strand, strandMarks, strandReachMm } from "../../drawing/strandMarks"
import { paintedMark } from "../fields/paintedMark"

/** So much of a strand is shown at least, mm, and so much past where lightened hair may begin last. */
const leastShownMm = 60
const pastMm = 20

/** One strand from scalp to ends, as far as it matters: `said` tells the same in words. */
export function StrandPicture({ strand, said }: { strand: Strand; said: string }) {
  const shownMm = Math.max(leastShownMm, (strand.begins?.highMm ?? 0) + pastMm)
  const reach = strandReachMm + 0.6
  return (
    <svg
      className="strand-picture"
      viewBox={`-1 ${-reach} ${shownMm + 2} ${2 * reach}`}
      role="img"
      aria-label={said}
    >
      {strandMarks(strand, shownMm)
        .flatMap(paintedMark)
        .map((path, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the marks of a strand keep their order
          <path key={i} {...path} />
        ))}
    </svg>
  )
}
