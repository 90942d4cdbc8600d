import { useEffect, useState } from "react"
import {
  type LongUnseen,
  longUnseen,
  noRetention,
  type Retention,
  type RetentionYears,
  retentionYears,
} from "../../core/cards/retention"
import { todayHere } from "../../session/cards/nextVisit"
import { useWords } from "../../session/words"
import { browserShelf } from "../../storage/browserShelf"
import { type RightsEntry, rightsLog } from "../../storage/clientRights"
import { changeRetention, readRetention, writtenDays } from "../../storage/retention"
import { SelectField } from "../fields/SelectField"
import type { CardsOnScreen } from "./useCards"

type Props = { cards: CardsOnScreen; onShow: (id: string) => void }
/** No more are shown at once. */
const mostShown = 50

/** Whom the salon wants to be asked about, how long cards are kept, and what was handed out or erased. */
export function KeptCards({ cards, onShow }: Props) {
  const w = useWords().cards
  const { retention, due, log, change } = useKeptCards(cards)
  const stay = (id: string) => change((kept) => ({ ...kept, stays: { ...kept.stays, [id]: todayHere() } }))
  return (
    <>
      {retention.years !== null && due.length > 0 && (
        <details className="kept-cards">
          <summary>{w.retention.due(due.length, retention.years)}</summary>
          <ul className="shelf">
            {due.slice(0, mostShown).map((card) => (
              <Due key={card.id} card={card} onShow={onShow} onStay={stay} />
            ))}
          </ul>
          <p className="aside">{w.retention.how}</p>
        </details>
      )}
      <details className="kept-cards">
        <summary>{w.retention.title}</summary>
        <SelectField
          name={w.retention.years}
          empty={w.retention.never}
          options={retentionYears.map((years) => ({
            value: String(years),
            label: w.retention.choice(years),
          }))}
          value={retention.years === null ? null : String(retention.years)}
          onChange={(years) => change((kept) => ({ ...kept, years: yearsOf(years) }))}
        />
        <p className="aside">{w.retention.how}</p>
        <h3>{w.rights.log.title}</h3>
        {log.length === 0 && <p className="aside">{w.rights.log.none}</p>}
        <ul>
          {log.slice(0, mostShown).map((entry, at) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two of one day may be alike
            <li key={at}>{w.rights.log.line(entry)}</li>
          ))}
        </ul>
      </details>
    </>
  )
}

const yearsOf = (text: string | null): RetentionYears | null =>
  retentionYears.find((years) => String(years) === text) ?? null

function Due(props: { card: LongUnseen; onShow: (id: string) => void; onStay: (id: string) => void }) {
  const { card, onShow, onStay } = props
  const w = useWords().cards.retention
  return (
    <li>
      <button type="button" className="button quiet shelf-name" onClick={() => onShow(card.id)}>
        <b>{card.name}</b>
        <span className="aside">{w.line(card.since)}</span>
      </button>
      <button
        type="button"
        className="button quiet"
        aria-label={w.stayNamed(card.name)}
        onClick={() => onStay(card.id)}
      >
        {w.stay}
      </button>
    </li>
  )
}

/** What is kept of how cards are kept, read again with the cards. */
function useKeptCards({ rows, attempt }: CardsOnScreen) {
  const [retention, setRetention] = useState<Retention>(noRetention)
  const [due, setDue] = useState<readonly LongUnseen[]>([])
  const [log, setLog] = useState<readonly RightsEntry[]>([])
  useEffect(() => {
    const read = async () => {
      const [kept, entries] = await Promise.all([readRetention(browserShelf), rightsLog(browserShelf)])
      const dateless = rows.flatMap(({ id, latestDay }) => (latestDay === null ? [id] : []))
      const writtenOn = kept.years === null ? new Map() : await writtenDays(browserShelf, dateless)
      setRetention(kept)
      setLog(entries.toReversed())
      setDue(longUnseen(rows, kept, { today: todayHere(), writtenOn }))
    }
    read().catch(() => {})
  }, [rows])
  const change = (edit: (kept: Retention) => Retention) =>
    void attempt(() => changeRetention(browserShelf, edit))
  return { retention, due, log, change }
}
