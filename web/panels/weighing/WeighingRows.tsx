import { gramsText } from "../../core/text/figureText"
import { numberText } from "../../core/text/numberText"
import type { SalonShelf } from "../../core/weighing/salonRecord"
import type { SeenWeighing } from "../../core/weighing/weighingsSeen"
import { changeSalonHere } from "../../session/useSalon"

/** Every weighing, the latest first; the doubted ones named, each of which can be left out. */
export function WeighingRows({ rows }: { rows: readonly SeenWeighing[] }) {
  const doubted = rows.filter(({ isDoubted }) => isDoubted)
  return (
    <>
      {doubted.length > 0 && (
        <ul className="cautions" aria-label="Doubted weighings">
          {doubted.map(({ row, expectedG }) => (
            <li key={row.id}>
              {row.name}: {numberText(row.productG)} g weighed, about {gramsText(expectedG.mid)} expected by
              the others. Check it, or leave it out.
            </li>
          ))}
        </ul>
      )}
      <details>
        <summary>{rows.length === 1 ? "One weighing" : `${rows.length} weighings`}</summary>
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
  const change = (label: string, next: (weighings: SalonShelf["weighings"]) => SalonShelf["weighings"]) =>
    void changeSalonHere(label, (salon) => ({ ...salon, weighings: next(salon.weighings) }))
  const leaveOut = (leftOut: boolean) =>
    change(leftOut ? "Leave a weighing out" : "Count a weighing again", (all) =>
      all.map((each) => (each.id === row.id ? { ...each, leftOut } : each)),
    )
  return (
    <li>
      <p>
        {row.name}
        <span className="aside">
          {numberText(row.productG)} g weighed, {gramsText(expectedG.mid)} expected
        </span>
      </p>
      <label className="check">
        <input type="checkbox" checked={!row.leftOut} onChange={({ target }) => leaveOut(!target.checked)} />
        Counts
      </label>
      <button
        type="button"
        className="button quiet"
        aria-label={`Take out ${row.name}`}
        onClick={() => change("Take a weighing out", (all) => all.filter(({ id }) => id !== row.id))}
      >
        Take out
      </button>
    </li>
  )
}
