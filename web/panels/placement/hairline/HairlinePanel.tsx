import { useWords } from "../../../session/words"
import { LandmarkFields } from "./LandmarkFields"
import { WornFields } from "./WornFields"

/** The client's own hairline in figures, beside the map on which it is dragged. */
export function HairlinePanel() {
  const w = useWords().placement.hairline
  return (
    <section className="hairline-panel" aria-labelledby="client-hairline">
      <h2 id="client-hairline">{w.title}</h2>
      <p className="aside">{w.hint}</p>
      <LandmarkFields />
      <WornFields />
    </section>
  )
}
