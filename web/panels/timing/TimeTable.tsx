import { isFoil } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import { headOf } from "../../core/figures/measured"
import type { TimedPlan } from "../../core/schedule/timedPlan"
import { kindWords, whereOf } from "../../core/text/words"
import { Scroller } from "../fields/Scroller"
import { rangeText } from "./minutes"

type Timed = Extract<TimedPlan, { ok: true }>

/** The chart in words and numbers: minutes of the visit, counted from the first parting. */
export function TimeTable({ plan, timed: { schedule } }: { plan: Plan; timed: Timed }) {
  const head = headOf(plan)
  const foils = new Map(plan.sections.filter(isFoil).map((foil) => [foil.id, foil]))
  return (
    <Scroller name="Times of every foil">
      <table className="times wide">
        <thead>
          <tr>
            <th scope="col">Foil</th>
            <th scope="col">On</th>
            <th scope="col">Look</th>
            <th scope="col">Ready from–to</th>
            <th scope="col">Off</th>
            <th scope="col">Never past</th>
            <th scope="col">Minutes on</th>
          </tr>
        </thead>
        <tbody>
          {schedule.foils.map(({ id, onAtMin, looksAtMin, readyAtMin, offAtMin, limitAtMin, onMin }) => {
            const foil = foils.get(id)
            return (
              <tr key={id}>
                <th scope="row">
                  <b>{foil?.mapNumber}</b> {foil && `${kindWords[foil.kind]}, ${whereOf(foil, head)}`}
                </th>
                <td>{Math.round(onAtMin)}</td>
                <td>{looksAtMin.length > 0 ? Math.round(looksAtMin[0]) : "–"}</td>
                <td>{rangeText(readyAtMin)}</td>
                <td>{Math.round(offAtMin)}</td>
                <td>{Math.round(limitAtMin)}</td>
                <td>{Math.round(onMin)}</td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </Scroller>
  )
}
