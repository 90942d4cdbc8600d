import { ofCard } from "../../core/calendar/daysToCome"
import type { ClientCard } from "../../core/cards/card"
import { type CardVisit, dueOf } from "../../core/cards/cardList"
import { setInitials } from "../../core/edits/plan/setPlanDetails"
import { letters } from "../../core/fields/limits"
import { initialsOf } from "../../core/text/initials"
import { openNextOf, todayHere } from "../../session/cards/nextVisit"
import { saveCalendar } from "../../session/cards/saveCalendar"
import { commit } from "../../session/commit"
import { openInto, planStore } from "../../session/planStore"
import { sessionStore } from "../../session/sessionStore"
import { usePlan } from "../../session/usePlan"
import { notKeptWords, problemWords, useWords } from "../../session/words"
import { browserShelf } from "../../storage/browserShelf"
import { putOnCard } from "../../storage/cardVisits"
import { openKept } from "../../storage/shelf"
import type { CardPageProps } from "./cardPageProps"

type Props = CardPageProps & { card: ClientCard; visits: readonly CardVisit[] }

/** Every visit of a client, the latest first, and the next one in one touch. */
export function CardVisits({ card, cards, visits, onClose }: Props) {
  const { cards: words, plans } = useWords()
  const w = words.visits
  const plan = usePlan((open) => open)
  const isHere = visits.some(({ planId }) => planId === plan.id)
  const open = async (planId: string) => {
    if (planId === plan.id) return onClose()
    const opened = await cards.attempt(() => openKept(browserShelf, planId))
    if (!opened) return
    if (!opened.ok) return cards.setFault(problemWords(opened.problems[0]))
    openInto(opened.plan)
    sessionStore.setState({ screen: "client" })
    onClose()
  }
  const next = async (planId: string) => {
    const kept = await cards.attempt(() => openNextOf(planId))
    if (kept?.state === "saved") onClose()
    else if (kept) cards.setFault(notKeptWords(kept.why))
  }
  return (
    <section className="card-visits" aria-labelledby="visits-title">
      <h4 id="visits-title">{w.title}</h4>
      {visits.length > 0 && (
        <>
          <p>
            <button type="button" className="button strong" onClick={() => void next(visits[0].planId)}>
              {w.next}
            </button>
          </p>
          <p className="aside">{w.nextHow}</p>
        </>
      )}
      <DueDays card={card} visits={visits} />
      <ul className="shelf">
        {visits.map((visit) => (
          <li key={visit.planId}>
            <button
              type="button"
              className="button quiet shelf-name"
              aria-current={visit.planId === plan.id}
              onClick={() => void open(visit.planId)}
            >
              <b>{visit.name.trim() || plans.untitled}</b>
              <span className="aside">
                {plans.list.details([w.line(visit), ...(visit.planId === plan.id ? [w.openNow] : [])])}
              </span>
            </button>
          </li>
        ))}
      </ul>
      {visits.length === 0 && <p className="aside">{w.none}</p>}
      <button
        type="button"
        className="button"
        onClick={() => void cards.attempt(() => putHere(plan.id, isHere ? null : card))}
      >
        {isHere ? w.takeOff : w.putHere}
      </button>
    </section>
  )
}

/** When the client is due, for a calendar. */
function DueDays({ card, visits }: Pick<Props, "card" | "visits">) {
  const w = useWords().cards.calendar
  const today = todayHere()
  const due = dueOf(visits, today)
  const days = due ? ofCard(due, today) : []
  if (days.length === 0) return null
  const whose = { id: card.id, initials: initialsOf(card.name, Math.min(3, letters.initials)) }
  return (
    <>
      <p>
        <button type="button" className="button" onClick={() => void saveCalendar(days, whose)}>
          {w.add}
        </button>
      </p>
      <p className="aside">{w.holds}</p>
    </>
  )
}

/** The plan on the screen belongs to a card from now on, or to none. It takes the initials where it has none. */
export async function putHere(planId: string, card: ClientCard | null) {
  await putOnCard(browserShelf, planId, card?.id ?? null)
  const { present } = planStore.getState()
  if (!card || present.id !== planId || present.client.initials !== "") return
  const initials = initialsOf(card.name, Math.min(3, letters.initials))
  commit({ chapter: "cards", code: "put-on-card" }, setInitials(initials))
}
