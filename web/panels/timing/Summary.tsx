import type { Piece } from "../../core/kinds/kindRecord"
import type { Schedule } from "../../core/schedule/timing"
import { useWords } from "../../session/words"

type Props = { schedule: Schedule; piece: Piece }

/** The four figures that a visit is planned by, to be read at arm's length. */
export function Summary({ schedule: { lastOnMin, looksAtMin, rinseMin, chairMin }, piece }: Props) {
  const w = useWords().timing.figures
  const figures: [string, string][] = [
    [w.lastOn(piece), w.minute(lastOnMin)],
    [w.firstCheck, looksAtMin.length > 0 ? w.minute(Math.min(...looksAtMin)) : w.noCheck],
    [w.lastOff(piece), w.minute(rinseMin)],
    [w.inChair, w.span(chairMin)],
  ]
  return (
    <dl className="summary">
      {figures.map(([term, value]) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  )
}
