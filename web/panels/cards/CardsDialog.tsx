import "./cards.css"
import { useState } from "react"
import { newCard } from "../../core/cards/card"
import { newId } from "../../core/document/newId"
import { useWords } from "../../session/words"
import { browserShelf } from "../../storage/browserShelf"
import { keepCard } from "../../storage/cards"
import { Modal } from "../fields/Modal"
import { CardPage } from "./CardPage"
import { CardsList } from "./CardsList"
import { ImportNames } from "./ImportNames"
import { KeptCards } from "./KeptCards"
import { NewCard } from "./NewCard"
import { OpenClientFile } from "./OpenClientFile"
import { useCards } from "./useCards"

type Props = { onClose: () => void; openId?: string | null }

/** The clients of this browser: all of them, or the card of one. */
export function CardsDialog({ onClose, openId = null }: Props) {
  const w = useWords().cards
  const cards = useCards()
  const [shownId, setShownId] = useState(openId)
  const make = async (name: string) => {
    const made = await cards.attempt(() => keepCard(browserShelf, newCard(newId(), name), null))
    if (made) setShownId(made.card.id)
  }
  return (
    <Modal title={w.title} onClose={onClose} writing={shownId !== null}>
      {cards.fault && (
        <p className="fault" role="alert">
          {cards.fault}
        </p>
      )}
      {shownId === null ? (
        <>
          <NewCard onMake={(name) => void make(name)} />
          <CardsList cards={cards} onShow={setShownId} />
          <ImportNames cards={cards} />
          <OpenClientFile cards={cards} />
          <KeptCards cards={cards} onShow={setShownId} />
        </>
      ) : (
        <CardPage
          key={shownId}
          id={shownId}
          cards={cards}
          onShow={setShownId}
          onBack={() => setShownId(null)}
          onClose={onClose}
        />
      )}
    </Modal>
  )
}
