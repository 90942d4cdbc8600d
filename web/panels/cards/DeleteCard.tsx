import { useState } from "react"
import { useWords } from "../../session/words"
import { browserShelf } from "../../storage/browserShelf"
import { removeCard } from "../../storage/cardVisits"
import type { CardPageProps } from "./cardPageProps"

/** Says what goes and what stays, and asks. */
export function DeleteCard(props: CardPageProps & { name: string; plans: number }) {
  const { id, cards, onBack, name, plans } = props
  const { cards: words, common } = useWords()
  const w = words.remove
  const [isAsking, setAsking] = useState(false)
  const remove = async () => {
    const isGone = await cards.attempt(async () => {
      await removeCard(browserShelf, id)
      return true
    })
    if (isGone) onBack()
  }
  if (!isAsking)
    return (
      <p>
        <button type="button" className="button" onClick={() => setAsking(true)}>
          {w.open}
        </button>
      </p>
    )
  return (
    <div role="alert">
      <p>{w.ask(name, plans)}</p>
      <div className="actions">
        <button type="button" className="button strong" onClick={() => void remove()}>
          {w.do}
        </button>
        <button type="button" className="button" onClick={() => setAsking(false)}>
          {common.actions.cancel}
        </button>
      </div>
    </div>
  )
}
