import { clearOverlap } from "../../core/edits/sections/clearOverlap"
import { measured } from "../../core/figures/measured"
import type { Overlap } from "../../core/figures/overlaps"
import { foilName, overlapWords, takenTwiceWords } from "../../core/figures/overlapWords"
import { commit } from "../../session/commit"
import { usePlan } from "../../session/usePlan"

/** Sections that take the same hair, cross-hatched on the map, each with its cure; the totals count that hair once. */
export function OverlapList() {
  const figures = usePlan(measured)
  const { overlaps } = figures
  if (overlaps.length === 0) return null
  const less = takenTwiceWords(figures)
  return (
    <section aria-labelledby="overlaps-title">
      <h2 id="overlaps-title">The same hair twice</h2>
      <ul className="overlaps">
        {overlaps.map((overlap) => (
          <li key={`${overlap.earlier.id} ${overlap.later.id}`}>
            <OneOverlap overlap={overlap} />
          </li>
        ))}
      </ul>
      {less && <p className="aside">In the totals {less}.</p>}
    </section>
  )
}

function OneOverlap({ overlap }: { overlap: Overlap }) {
  const { earlier, later } = overlap
  return (
    <>
      <p>{overlapWords(overlap)}</p>
      <button
        type="button"
        className="button"
        onClick={() => commit(`Thin ${foilName(later)}`, clearOverlap(later.id, earlier.id))}
      >
        Thin {foilName(later)}
      </button>
    </>
  )
}
