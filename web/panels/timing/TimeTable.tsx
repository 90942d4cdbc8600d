import { coatsOf, isFoil } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import { headOf } from "../../core/figures/measured"
import { pieceOf } from "../../core/kinds/kindRecords"
import { placeOf } from "../../core/placement/places"
import type { TimedPlan } from "../../core/schedule/timedPlan"
import { useWords } from "../../session/words"
import { say } from "../../words/say"
import { Scroller } from "../fields/Scroller"

type Timed = Extract<TimedPlan, { ok: true }>

/** The chart in words and numbers: minutes of the visit, counted from the first parting. */
export function TimeTable({ plan, timed: { schedule } }: { plan: Plan; timed: Timed }) {
  const head = headOf(plan)
  const { timing, common } = useWords()
  const w = timing.table
  const piece = pieceOf(plan.sections.filter(isFoil))
  const foils = new Map(plan.sections.filter(isFoil).map((foil) => [foil.id, foil]))
  return (
    <Scroller name={w.name(piece)}>
      <table className="times wide">
        <thead>
          <tr>
            <th scope="col">{w.foil(piece)}</th>
            <th scope="col">{w.on}</th>
            <th scope="col">{w.check}</th>
            <th scope="col">{w.ready}</th>
            <th scope="col">{w.off}</th>
            <th scope="col">{w.limit}</th>
            <th scope="col">{w.minutesOn}</th>
          </tr>
        </thead>
        <tbody>
          {schedule.foils.map(({ id, onAtMin, looksAtMin, offAtMin, limitAtMin, onMin, ...ready }) => {
            const foil = foils.get(id)
            const coats = foil ? coatsOf(foil) : []
            return (
              <tr key={id}>
                <th scope="row">
                  <b>{foil?.mapNumber}</b>{" "}
                  {foil &&
                    w.what({ kind: common.kinds[foil.kind], place: say(common.place, placeOf(foil, head)) })}
                </th>
                <td>
                  {ready.rootsOnAtMin === undefined
                    ? w.minute(onAtMin)
                    : coats.map(({ mix, part }) => (
                        <div key={mix}>
                          {mix} {w.minute(part === "roots" ? (ready.rootsOnAtMin ?? onAtMin) : onAtMin)}
                        </div>
                      ))}
                </td>
                <td>{looksAtMin.length > 0 ? w.minute(looksAtMin[0]) : w.none}</td>
                <td>
                  {coats.length < 2
                    ? w.readyRange(ready.readyAtMin)
                    : coats.map(({ mix }, i) => (
                        <div key={mix}>
                          {mix} {w.readyRange(ready.coatsReadyAtMin[i])}
                        </div>
                      ))}
                </td>
                <td>{w.minute(offAtMin)}</td>
                <td>{w.minute(limitAtMin)}</td>
                <td>{w.minute(onMin)}</td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </Scroller>
  )
}
