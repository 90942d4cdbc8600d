import { useState } from "react"
import { mergeCards } from "../../core/cards/mergeCards"
import { notKeptWords, problemWords, useWords } from "../../session/words"
import { browserShelf } from "../../storage/browserShelf"
import { type KeptCard, readCard } from "../../storage/cards"
import { keepMerged } from "../../storage/cardVisits"
import { CardsList } from "./CardsList"
import type { CardPageProps } from "./cardPageProps"

/** Two cards of one person become one: chosen, said what happens, and done by a second touch. */
export function MergeCard({ kept, cards }: CardPageProps & { kept: KeptCard }) {
  const { cards: words, common } = useWords()
  const w = words.merge
  const [other, setOther] = useState<KeptCard | null>(null)
  const choose = async (id: string) => {
    const read = await cards.attempt(() => readCard(browserShelf, id))
    if (read?.ok) setOther(read.kept)
    else if (read) cards.setFault(words.unread(problemWords(read.problem)))
  }
  const merge = async (two: KeptCard) => {
    const merged = mergeCards(kept.card, two.card)
    if (!merged) return cards.setFault(notKeptWords({ code: "merged-too-long" }))
    await cards.attempt(() => keepMerged(browserShelf, merged, kept, two))
    setOther(null)
  }
  return (
    <details className="merge">
      <summary>{w.title}</summary>
      <p className="aside">{w.how}</p>
      {other ? (
        <div role="alert">
          <p>{w.ask(kept.card.name, other.card.name)}</p>
          <div className="actions">
            <button type="button" className="button strong" onClick={() => void merge(other)}>
              {w.do}
            </button>
            <button type="button" className="button" onClick={() => setOther(null)}>
              {common.actions.cancel}
            </button>
          </div>
        </div>
      ) : (
        <CardsList cards={cards} onShow={(id) => void choose(id)} without={kept.card.id} />
      )}
    </details>
  )
}
