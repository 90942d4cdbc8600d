import "./cards.css"
import { useState } from "react"
import { useStore } from "zustand"
import { cardHere } from "../../session/cards/cardHere"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { Late } from "../parts/Late"
import { latePart } from "../parts/latePart"

const cardsDialog = latePart(async () => (await import("./CardsDialog")).CardsDialog)

/** Whose card the plan on the screen is on, and the way there. */
export function CardHere() {
  const w = useWords().cards.here
  const planId = usePlan(({ id }) => id)
  const card = useStore(cardHere, (here) => (here.planId === planId ? here.card : null))
  const [isOpen, setOpen] = useState(false)
  return (
    <section aria-labelledby="card-here">
      <h2 id="card-here">{w.title}</h2>
      <p className="card-here">
        <span>{card ? card.name : w.none}</span>
        <button type="button" className="button" onClick={() => setOpen(true)}>
          {card ? w.show : w.choose}
        </button>
      </p>
      {isOpen && (
        <Late
          part={cardsDialog}
          shape="line"
          given={{ openId: card?.id ?? null, onClose: () => setOpen(false) }}
        />
      )}
    </section>
  )
}
