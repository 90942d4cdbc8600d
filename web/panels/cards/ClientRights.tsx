import { useState } from "react"
import { eraseForGood, saveClient } from "../../session/cards/clientRights"
import { useWords } from "../../session/words"
import { browserShelf } from "../../storage/browserShelf"
import { plansOnCard } from "../../storage/clientRights"
import type { CardPageProps } from "./cardPageProps"

type Props = CardPageProps & {
  name: string
  /** The card cannot be read: then there is nothing to hand out, but all of it can go. */
  isUnread?: boolean
}

/** What a client may ask for: everything handed out, or everything erased, said in plain words and asked once. */
export function ClientRights({ id, cards, onBack, name, isUnread = false }: Props) {
  const w = useWords().cards.rights
  return (
    <section className="client-rights" aria-labelledby="rights-title">
      <h4 id="rights-title">{w.title}</h4>
      {!isUnread && (
        <>
          <div className="actions">
            {(["file", "page"] as const).map((form) => (
              <button
                key={form}
                type="button"
                className="button"
                onClick={() => void cards.attempt(() => saveClient(id, form))}
              >
                {form === "file" ? w.saveFile : w.savePage}
              </button>
            ))}
          </div>
          <p className="aside">{w.holds}</p>
        </>
      )}
      <Erase id={id} cards={cards} onBack={onBack} name={name} />
    </section>
  )
}

function Erase({ id, cards, onBack, name }: Pick<Props, "id" | "cards" | "onBack" | "name">) {
  const { cards: words, common } = useWords()
  const w = words.rights
  /** How many plans go, once it was asked. */
  const [plans, setPlans] = useState<number | null>(null)
  const ask = async () => setPlans(await cards.attempt(() => plansOnCard(browserShelf, id)))
  const erase = async () => {
    const isGone = await cards.attempt(async () => {
      await eraseForGood(id)
      return true
    })
    if (isGone) onBack()
  }
  if (plans === null)
    return (
      <button type="button" className="button" onClick={() => void ask()}>
        {w.erase}
      </button>
    )
  return (
    <div role="alert">
      <p>{w.ask(name, plans)}</p>
      <p>{w.stays}</p>
      <div className="actions">
        <button type="button" className="button strong" onClick={() => void erase()}>
          {w.do}
        </button>
        <button type="button" className="button" onClick={() => setPlans(null)}>
          {common.actions.cancel}
        </button>
      </div>
    </div>
  )
}
