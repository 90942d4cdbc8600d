import { useMemo, useState } from "react"
import { type CardOrder, type CardRow, cardOrders, sortCards } from "../../core/cards/cardList"
import { searchCards } from "../../core/cards/searchCards"
import { useLanguage, useWords } from "../../session/words"
import { Choices } from "../fields/Choices"
import { FoundList, SearchField } from "../fields/FoundList"
import type { CardsOnScreen } from "./useCards"

type Props = { cards: CardsOnScreen; onShow: (id: string) => void; without?: string }

/** All cards, found as typed, by name, last visit or next due. */
export function CardsList({ cards, onShow, without }: Props) {
  const w = useWords().cards
  const language = useLanguage()
  const [sought, setSought] = useState("")
  const [order, setOrder] = useState<CardOrder>("name")
  const sorted = useMemo(() => sortCards(cards.rows, order, language), [cards.rows, order, language])
  const found = useMemo(
    () => searchCards(sorted, sought).filter(({ id }) => id !== without),
    [sorted, sought, without],
  )
  return (
    <section className="cards-list" aria-label={w.title}>
      <SearchField name={w.find} sought={sought} onSought={setSought} />
      {without === undefined && (
        <Choices
          legend={w.order}
          options={cardOrders.map((value) => ({ value, label: w.orders[value] }))}
          value={order}
          onChange={setOrder}
        />
      )}
      <FoundList found={found} row={(row) => <Row key={row.id} row={row} onShow={onShow} />} more={w.more} />
      {cards.isRead && found.length === 0 && (
        <p className="aside">{cards.rows.length === 0 ? w.none : w.nothingFound}</p>
      )}
    </section>
  )
}

function Row({ row, onShow }: { row: CardRow; onShow: (id: string) => void }) {
  const { cards: w, plans } = useWords()
  return (
    <li>
      <button type="button" className="button quiet shelf-name" onClick={() => onShow(row.id)}>
        <b className={`card-mark ${row.colour}`}>{row.name}</b>
        <span className="aside">
          {plans.list.details([w.lastDay(row.lastDay), ...(row.due ? [w.due(row.due)] : [])])}
        </span>
      </button>
    </li>
  )
}
