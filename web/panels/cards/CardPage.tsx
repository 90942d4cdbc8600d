import { useEffect, useRef, useState } from "react"
import type { ClientCard } from "../../core/cards/card"
import { type CardVisit, inOrder } from "../../core/cards/cardList"
import { problemWords, useWords } from "../../session/words"
import { browserShelf } from "../../storage/browserShelf"
import { type KeptCard, keepCard, readCard } from "../../storage/cards"
import { visitsOf } from "../../storage/cardVisits"
import { CardFields } from "./CardFields"
import { CardVisits } from "./CardVisits"
import { ClientRights } from "./ClientRights"
import type { CardEdit, CardPageProps } from "./cardPageProps"
import { DeleteCard } from "./DeleteCard"
import { MergeCard } from "./MergeCard"
import { StandingAllergies } from "./StandingAllergies"

/** The card of one client: who, what stands, and every visit. */
export function CardPage(props: CardPageProps) {
  const { id, cards, onBack } = props
  const w = useWords().cards
  const [kept, setKept] = useState<KeptCard | null>(null)
  const latest = useRef<KeptCard | null>(null)
  /** Changes are written one after the other, each on what the one before it left. */
  const line = useRef<Promise<unknown>>(Promise.resolve())
  const show = (next: KeptCard) => {
    latest.current = next
    setKept(next)
  }
  const [visits, setVisits] = useState<readonly CardVisit[]>([])
  const [unread, setUnread] = useState("")
  const readAgain = async () => {
    const [read, own] = await Promise.all([readCard(browserShelf, id), visitsOf(browserShelf, id)])
    setVisits(inOrder(own))
    if (read?.ok) show(read.kept)
    else if (read) setUnread(w.unread(problemWords(read.problem)))
    else onBack()
  }
  // biome-ignore lint/correctness/useExhaustiveDependencies: the rows are read again after every change, by whomever
  useEffect(() => {
    line.current = line.current.then(readAgain).catch(() => {})
  }, [id, cards.rows])
  /** What was touched and is not written yet stands on the screen all the same. */
  const [unwritten, setUnwritten] = useState<readonly CardEdit[]>([])
  const change = (edit: CardEdit) => {
    setUnwritten((edits) => [...edits, edit])
    const write = async () => {
      try {
        const before = latest.current
        if (before) show(await keepCard(browserShelf, edited(before.card, edit), before.rev))
      } finally {
        setUnwritten((edits) => edits.slice(1))
      }
    }
    line.current = line.current.then(() => cards.attempt(write))
  }
  const card = kept && unwritten.reduce(edited, kept.card)
  const nameInList = cards.rows.find((row) => row.id === id)?.name ?? ""
  return (
    <>
      <p>
        <button type="button" className="button quiet" onClick={onBack}>
          ‹ {w.all}
        </button>
      </p>
      {unread && (
        <p className="fault" role="alert">
          {unread}
        </p>
      )}
      {unread && <ClientRights {...props} name={nameInList} isUnread />}
      {kept && card && (
        <div className="card-page">
          <h3 className={`card-mark ${card.colour}`}>{card.name}</h3>
          <StandingAllergies allergies={card.allergies} onChange={change} />
          <CardVisits {...props} card={card} visits={visits} />
          <CardFields card={card} onChange={change} />
          <MergeCard {...props} kept={kept} />
          <ClientRights {...props} name={card.name} />
          <DeleteCard {...props} name={card.name} plans={visits.length} />
        </div>
      )}
    </>
  )
}

const edited = (card: ClientCard, edit: CardEdit): ClientCard => ({ ...card, ...edit(card) })
