import { plannedAndReal, type PlannedAndReal as Row } from "../../core/chair/chairDue"
import { chairOfRecord } from "../../core/chair/liveService"
import type { Plan } from "../../core/document/schema"
import { Scroller } from "../fields/Scroller"

/** What was planned for each foil at the chair and what came of it; nothing before the first service. */
export function PlannedAndReal({ plan }: { plan: Plan }) {
  const { service } = plan
  if (!service) return null
  const planned = service.foils.map(({ id, plannedOnMin, plannedMinutesOn }) => ({
    id,
    onAtMin: plannedOnMin,
    onMin: plannedMinutesOn,
  }))
  const rows = plannedAndReal(planned, chairOfRecord(service))
  const numberOf = new Map(service.foils.map(({ id, mapNumber }) => [id, mapNumber]))
  return (
    <section aria-labelledby="real-title">
      <h2 id="real-title">Planned and real</h2>
      <p>
        {new Intl.DateTimeFormat("en-GB", { dateStyle: "long", timeStyle: "short" }).format(
          new Date(service.startedAt),
        )}
        . Minutes count from the first parting.
      </p>
      <Scroller name="Planned and real times of every foil">
        <table className="times">
          <thead>
            <tr>
              <th scope="col">Foil</th>
              <th scope="col">On, planned</th>
              <th scope="col">On, real</th>
              <th scope="col">Minutes on, planned</th>
              <th scope="col">Minutes on, real</th>
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
  return (
    <tr>
      <th scope="row">
        <b>{number}</b>
      </th>
      <td>{Math.round(row.plannedOnMin)}</td>
      <td>{row.realOnMin === null ? "not on" : Math.round(row.realOnMin)}</td>
      <td>{Math.round(row.plannedMinutesOn)}</td>
      <td>{row.realMinutesOn === null ? "–" : Math.round(row.realMinutesOn)}</td>
    </tr>
  )
}
