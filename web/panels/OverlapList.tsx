import type { Section } from "../../geometry/section/section"
import { isFoil } from "../../geometry/section/section"
import { act } from "../plan/act"
import { clearOverlap } from "../plan/edits/clearOverlap"
import { areaText } from "../plan/figureText"
import { type Overlap, overlapsOf } from "../plan/overlaps"
import { usePlan } from "../plan/usePlan"

/** Sections that take the same hair, counted in both, each with its cure. */
export function OverlapList() {
  const overlaps = overlapsOf(usePlan((plan) => plan))
  if (overlaps.length === 0) return null
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
    </section>
  )
}

function OneOverlap({ overlap: { earlier, later, areaCm2 } }: { overlap: Overlap }) {
  const words = `${nameOf(later)} takes ${areaText(areaCm2)} of the hair of ${nameOf(earlier)}.`
  return (
    <>
      <p>{words}</p>
      <button
        type="button"
        className="button"
        onClick={() => act(`Thin ${nameOf(later)}`, clearOverlap(later.id, earlier.id))}
      >
        Thin {nameOf(later)}
      </button>
    </>
  )
}

const nameOf = (section: Section) => (isFoil(section) ? `foil ${section.mapNumber}` : section.name)
