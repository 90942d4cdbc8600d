import { afterService } from "../../core/calendar/daysToCome"
import type { Plan } from "../../core/document/schema"
import { dayOfService } from "../../core/record/doneToday"
import { returnDates } from "../../core/record/returnDates"
import { announceRefusal } from "../../session/announcements"
import { openNextVisit } from "../../session/cards/nextVisit"
import { saveCalendar } from "../../session/cards/saveCalendar"
import { nowHere } from "../../session/nowHere"
import { notKeptWords, useWords } from "../../session/words"
import { whyNotKept } from "../../storage/notKept"

/** When the client comes back, and a plan for it. */
export function NextVisit({ plan }: { plan: Plan }) {
  const { cards, chair } = useWords()
  const w = chair.floor.nextVisit
  const day = dayOfService(plan, nowHere().zone)
  const isToned = plan.service?.toners?.some(({ onAtMs }) => onAtMs !== null) ?? false
  const returns = returnDates(day, isToned)
  const { frame, toner, testBy } = returns
  const planIt = () =>
    planNext(plan, frame.from).catch((error) => announceRefusal(notKeptWords(whyNotKept(error))))
  return (
    <section aria-labelledby="next-visit-title">
      <h2 id="next-visit-title">{w.title}</h2>
      <p>{w.when(toner ?? frame)}</p>
      <p>{w.test(testBy)}</p>
      <div className="actions">
        <button type="button" className="touch" onClick={() => void planIt()}>
          {w.plan}
        </button>
        <button
          type="button"
          className="touch"
          onClick={() =>
            void saveCalendar(afterService(returns), { id: plan.id, initials: plan.client.initials })
          }
        >
          {cards.calendar.add}
        </button>
      </div>
    </section>
  )
}

/** The next visit stands beside this one among the plans, and is opened where the questions are asked. */
async function planNext(plan: Plan, day: string) {
  const kept = await openNextVisit(plan, day)
  if (kept.state !== "saved") announceRefusal(notKeptWords(kept.why))
}
