import { type Zone, zones } from "../../../geometry/scalp/zones"
import { measured } from "../../core/figures/measured"
import { takenTwiceWords } from "../../core/figures/overlapWords"
import { areaText, gramsRange, hairsRangeText } from "../../core/text/figureText"
import { usePlan } from "../../session/usePlan"

const zoneWords: Record<Zone, string> = { top: "Top", left: "Left side", right: "Right side", back: "Back" }

/** The totals of each part of the head that foils lie on. */
export function ZoneTotals() {
  const figures = usePlan(measured)
  const { byZone, totals } = figures
  if (totals.foils === 0) return null
  const less = takenTwiceWords(figures)
  const rows = zones
    .map((zone) => [zoneWords[zone], byZone[zone]] as const)
    .filter(([, { foils }]) => foils > 0)
  return (
    <details>
      <summary>Totals by zone</summary>
      <table className="totals">
        <thead>
          <tr>
            <th scope="col">Zone</th>
            <th scope="col">Foils</th>
            <th scope="col">Hairs</th>
            <th scope="col">Hair to coat</th>
            <th scope="col">Product</th>
          </tr>
        </thead>
        <tbody>
          {[...rows, ["In all", totals] as const].map(([name, figures]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{figures.foils}</td>
              <td>{hairsRangeText(figures.hairs)}</td>
              <td>{areaText(figures.strandAreaCm2)}</td>
              <td>{gramsRange(figures.productG)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {less && <p>{less}.</p>}
    </details>
  )
}
