import { zones } from "../../../geometry/scalp/zones"
import { measured } from "../../core/figures/measured"
import { takenTwiceOf } from "../../core/figures/takenTwice"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"

/** The totals of each part of the head that foils lie on. */
export function ZoneTotals() {
  const { common, placement } = useWords()
  const w = placement.list.totals
  const t = common.figures
  const figures = usePlan(measured)
  const { byZone, totals } = figures
  if (totals.productG.high === 0) return null
  const less = takenTwiceOf(figures)
  const rows = zones
    .map((zone) => [w.zones[zone], byZone[zone]] as const)
    .filter(([, { productG }]) => productG.high > 0)
  return (
    <details>
      <summary>{w.title}</summary>
      <table className="totals">
        <thead>
          <tr>
            <th scope="col">{w.zone}</th>
            <th scope="col">{w.foils}</th>
            <th scope="col">{w.hairs}</th>
            <th scope="col">{w.hairToCoat}</th>
            <th scope="col">{w.product}</th>
          </tr>
        </thead>
        <tbody>
          {[...rows, [w.all, totals] as const].map(([name, figures]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{t.whole(figures.foils)}</td>
              <td>{t.hairsRange(figures.hairs)}</td>
              <td>{t.area(figures.strandAreaCm2)}</td>
              <td>{t.gramsRange(figures.productG)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {less && <p>{placement.list.overlaps.inTotals(less)}</p>}
    </details>
  )
}
