import type { ClientCard } from "../../core/cards/card"
import type { CardsOnScreen } from "./useCards"

/** What every part of a card's page is given. */
export type CardPageProps = {
  id: string
  cards: CardsOnScreen
  onShow: (id: string) => void
  onBack: () => void
  onClose: () => void
}

/** What a change makes of a card. */
export type CardEdit = (card: ClientCard) => Partial<ClientCard>
