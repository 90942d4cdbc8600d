import { sectionNameOf } from "../../core/document/sectionNameCode"
import { clearOverlap } from "../../core/edits/sections/clearOverlap"
import { measured } from "../../core/figures/measured"
import type { Overlap } from "../../core/figures/overlaps"
import { takenTwiceOf } from "../../core/figures/takenTwice"
import { commit } from "../../session/commit"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"

/** Sections that take the same hair, cross-hatched on the map, each with its cure; the totals count that hair once. */
export function OverlapList() {
  const w = useWords().placement.list.overlaps
  const figures = usePlan(measured)
  const { overlaps } = figures
  if (overlaps.length === 0) return null
  const less = takenTwiceOf(figures)
  return (
    <section aria-labelledby="overlaps-title">
      <h2 id="overlaps-title">{w.title}</h2>
      <ul className="overlaps">
        {overlaps.map((overlap) => (
          <li key={`${overlap.earlier.id} ${overlap.later.id}`}>
            <OneOverlap overlap={overlap} />
          </li>
        ))}
      </ul>
      {less && <p className="aside">{w.inTotals(less)}</p>}
    </section>
  )
}

function OneOverlap({ overlap }: { overlap: Overlap }) {
  const w = useWords().placement.list.overlaps
  const { earlier, later, areaCm2 } = overlap
  const names = { earlier: sectionNameOf(earlier), later: sectionNameOf(later) }
  return (
    <>
      <p>{w.told({ ...names, areaCm2 })}</p>
      <button
        type="button"
        className="button"
        onClick={() =>
          commit(
            { chapter: "placement", code: "reduce", section: names.later },
            clearOverlap(later.id, earlier.id),
          )
        }
      >
        {w.reduce(names.later)}
      </button>
    </>
  )
}
