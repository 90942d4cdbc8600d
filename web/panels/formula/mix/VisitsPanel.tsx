import { useState } from "react"
import { visitsOfPlan } from "../../../core/bowls/visits"
import { announceRefusal } from "../../../session/announcements"
import { usePlan } from "../../../session/usePlan"
import { notKeptWords, problemWords, useWords, words } from "../../../session/words"
import { whyNotKept } from "../../../storage/notKept"
import { desk, openFromShelf } from "../../plans/shelfActions"
import { type LaidOut, layOutVisits, takeVisitsBack } from "./layOutVisits"

/** The visits that the lift takes where one does not give it: what today, what next and when; one tap plans both. */
export function VisitsPanel() {
  const w = useWords().formula.mixing
  const plan = usePlan((open) => open)
  const [laidOut, setLaidOut] = useState<LaidOut | null>(null)
  const visits = visitsOfPlan(plan)
  const stored = laidOut?.today.id === plan.id ? laidOut : null
  if (visits.length < 2) return stored && <SecondVisit stored={stored} onTakenBack={() => setLaidOut(null)} />
  const layOut = () =>
    layOutVisits(desk, plan).then(
      (laid) => (laid.ok ? setLaidOut(laid) : notStored(notKeptWords(laid.why))),
      (error) => notStored(notKeptWords(whyNotKept(error))),
    )
  return (
    <section aria-labelledby="visits-title">
      <h2 id="visits-title">{w.visits.title(visits.length)}</h2>
      <ol className="visits">
        {visits.map((stage, index) => (
          <li key={stage.fromLevel}>{w.visit({ ...stage, visit: index + 1 })}</li>
        ))}
      </ol>
      {stored ? (
        <SecondVisit stored={stored} onTakenBack={() => setLaidOut(null)} />
      ) : (
        <div className="actions">
          <button type="button" className="button" onClick={() => void layOut()}>
            {w.visits.today(visits[0].toLevel)}
          </button>
        </div>
      )}
    </section>
  )
}

function SecondVisit({ stored, onTakenBack }: { stored: LaidOut; onTakenBack: () => void }) {
  const w = useWords().formula.mixing.visits
  const takeBack = () =>
    takeVisitsBack(desk, stored).then(onTakenBack, (error) =>
      announceRefusal(notKeptWords(whyNotKept(error))),
    )
  return (
    <div className="search">
      <p>{w.stored(stored)}</p>
      <button type="button" className="button" onClick={() => void open(stored.id)}>
        {w.open}
      </button>
      <button type="button" className="button" onClick={() => void takeBack()}>
        {w.undo}
      </button>
    </div>
  )
}

const notStored = (why: string) => announceRefusal(words().formula.mixing.visits.notStored(why))

async function open(id: string) {
  const opened = await openFromShelf(desk, id)
  if (!opened.ok) announceRefusal(words().timing.setAside.notOpened(problemWords(opened.problems[0])))
}
