import { LandmarkFields } from "./LandmarkFields"
import { WornFields } from "./WornFields"

/** The client's own hairline in figures, beside the map on which it is dragged. */
export function HairlinePanel() {
  return (
    <section className="hairline-panel" aria-labelledby="her-hairline">
      <h2 id="her-hairline">Her hairline</h2>
      <p className="aside">
        Drag a landmark in any view, or choose it and use the arrow keys: a millimetre, with Shift five. What
        is drawn near it goes along.
      </p>
      <LandmarkFields />
      <WornFields />
    </section>
  )
}
