import type { Plan } from "../../core/document/schema"
import { nextVisit } from "../../core/document/visits"
import { dayOfService } from "../../core/record/doneToday"
import { returnDates } from "../../core/record/returnDates"
import { announceRefusal } from "../../session/announcements"
import { nowHere } from "../../session/nowHere"
import { sessionStore } from "../../session/sessionStore"
import { notKeptWords, useWords } from "../../session/words"
import { whyNotKept } from "../../storage/notKept"
import { takeIn } from "../../storage/shelf"
import { desk, openFromShelf } from "../plans/shelfActions"

/** When the client comes back, and a plan for it. */
export function NextVisit({ plan }: { plan: Plan }) {
  const w = useWords().chair.floor.nextVisit
  const day = dayOfService(plan, nowHere().zone)
  const isToned = plan.service?.toners?.some(({ onAtMs }) => onAtMs !== null) ?? false
  const { frame, toner, testBy } = returnDates(day, isToned)
  const planIt = () =>
    planNext(plan, frame.from).catch((error) => announceRefusal(notKeptWords(whyNotKept(error))))
  return (
    <section aria-labelledby="next-visit-title">
      <h2 id="next-visit-title">{w.title}</h2>
      <p>{w.when(toner ?? frame)}</p>
      <p>{w.test(testBy)}</p>
      <p>
        <button type="button" className="touch" onClick={() => void planIt()}>
          {w.plan}
        </button>
      </p>
    </section>
  )
}

/** The next visit stands beside this one among the plans, and is opened where the questions are asked. */
async function planNext(plan: Plan, day: string) {
  const { plan: next, kept } = await takeIn(desk.shelf, nextVisit(plan, day))
  if (kept.state !== "saved") return announceRefusal(notKeptWords(kept.why))
  const opened = await openFromShelf(desk, next.id)
  if (opened.ok) sessionStore.setState({ screen: "client" })
}
