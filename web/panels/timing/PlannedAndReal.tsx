import { plannedAndReal, type PlannedAndReal as Row } from "../../core/chair/chairDue"
import { chairOfRecord } from "../../core/chair/liveService"
import type { Plan } from "../../core/document/schema"
import { pieceOf } from "../../core/kinds/kindRecords"
import { useWords } from "../../session/words"
import { Scroller } from "../fields/Scroller"

/** What was planned for each foil at the chair and what came of it; nothing before the first service. */
export function PlannedAndReal({ plan }: { plan: Plan }) {
  const { service } = plan
  const w = useWords().timing.actual
  if (!service) return null
  const planned = service.foils.map(({ id, plannedOnMin, plannedMinutesOn }) => ({
    id,
    onAtMin: plannedOnMin,
    onMin: plannedMinutesOn,
  }))
  const rows = plannedAndReal(planned, chairOfRecord(service))
  const piece = pieceOf(service.foils)
  const numberOf = new Map(service.foils.map(({ id, mapNumber }) => [id, mapNumber]))
  return (
    <section aria-labelledby="real-title">
      <h2 id="real-title">{w.title}</h2>
      <p>{w.when(Date.parse(service.startedAt))}</p>
      <Scroller name={w.name(piece)}>
        <table className="times">
          <thead>
            <tr>
              <th scope="col">{w.foil(piece)}</th>
              <th scope="col">{w.onPlanned}</th>
              <th scope="col">{w.onActual}</th>
              <th scope="col">{w.minutesPlanned}</th>
              <th scope="col">{w.minutesActual}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <FoilRow key={row.id} row={row} number={numberOf.get(row.id) ?? 0} />
            ))}
          </tbody>
        </table>
      </Scroller>
    </section>
  )
}

function FoilRow({ row, number }: { row: Row; number: number }) {
  const w = useWords().timing.actual
  return (
    <tr>
      <th scope="row">
        <b>{number}</b>
      </th>
      <td>{w.minute(row.plannedOnMin)}</td>
      <td>{row.realOnMin === null ? w.notOn : w.minute(row.realOnMin)}</td>
      <td>{w.minute(row.plannedMinutesOn)}</td>
      <td>{row.realMinutesOn === null ? w.none : w.minute(row.realMinutesOn)}</td>
    </tr>
  )
}
