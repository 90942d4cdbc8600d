import type { SalonShelf } from "../../core/weighing/salonRecord"
import type { SeenWeighing } from "../../core/weighing/weighingsSeen"
import { changeSalonHere } from "../../session/salon/useSalon"
import { type Done, useWords } from "../../session/words"

/** Every weighing, the latest first; the doubted ones named, each of which can be left out. */
export function WeighingRows({ rows }: { rows: readonly SeenWeighing[] }) {
  const w = useWords().weighing.rows
  const doubted = rows.filter(({ isDoubted }) => isDoubted)
  return (
    <>
      {doubted.length > 0 && (
        <ul className="cautions" aria-label={w.doubted}>
          {doubted.map(({ row, expectedG }) => (
            <li key={row.id}>
              {w.looksWrong({ name: row.name, weighedG: row.productG, expectedG: expectedG.mid })}
            </li>
          ))}
        </ul>
      )}
      <details>
        <summary>{w.count(rows.length)}</summary>
        <ul className="weighings">
          {rows.toReversed().map((seen) => (
            <WeighingRow key={seen.row.id} seen={seen} />
          ))}
        </ul>
      </details>
    </>
  )
}

function WeighingRow({ seen: { row, expectedG } }: { seen: SeenWeighing }) {
  const w = useWords().weighing.rows
  const change = (label: Done, next: (weighings: SalonShelf["weighings"]) => SalonShelf["weighings"]) =>
    void changeSalonHere(label, (salon) => ({ ...salon, weighings: next(salon.weighings) }))
  const leaveOut = (leftOut: boolean) =>
    change({ chapter: "weighing", code: leftOut ? "leave-out" : "count-again" }, (all) =>
      all.map((each) => (each.id === row.id ? { ...each, leftOut } : each)),
    )
  return (
    <li>
      <p>
        {row.name}
        <span className="aside">{w.figures({ weighedG: row.productG, expectedG: expectedG.mid })}</span>
      </p>
      <label className="check">
        <input type="checkbox" checked={!row.leftOut} onChange={({ target }) => leaveOut(!target.checked)} />
        {w.counts}
      </label>
      <button
        type="button"
        className="button quiet"
        aria-label={w.removeThis({ name: row.name })}
        onClick={() =>
          change({ chapter: "weighing", code: "remove-weighing" }, (all) =>
            all.filter(({ id }) => id !== row.id),
          )
        }
      >
        {w.remove}
      </button>
    </li>
  )
}
