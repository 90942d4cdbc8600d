import { useState } from "react"
import { coatsOf, isCoatedWith, isFoil } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import { bringBack } from "../../core/edits/plan/keepForAnotherDay"
import { setTiming } from "../../core/edits/plan/setTiming"
import type { NotKept } from "../../core/fields/notKept"
import { announceRefusal } from "../../session/announcements"
import { commit } from "../../session/commit"
import { notKeptWords, problemWords, useWords, words } from "../../session/words"
import { whyNotKept } from "../../storage/notKept"
import { desk, openFromShelf } from "../plans/shelfActions"
import { anotherDayName, moveToOwnVisit } from "./moveToOwnVisit"
import { changeTiming } from "./settings/changeTiming"

/** What cures have set aside in the plan, and the way back from each. */
export const SetAside = ({ plan }: { plan: Plan }) => (
  <>
    <AnotherDay plan={plan} />
    <FreshBowls plan={plan} />
    <Damp plan={plan} />
  </>
)

function AnotherDay({ plan }: { plan: Plan }) {
  const w = useWords().timing.setAside
  const [moved, setMoved] = useState<{ from: string; id: string; name: string } | null>(null)
  const numbers = (plan.later ?? []).filter(isFoil).map(({ mapNumber }) => mapNumber)
  if (numbers.length === 0) return moved?.from === plan.id ? <OwnPlan {...moved} /> : null
  const move = () =>
    moveToOwnVisit(desk, plan).then(
      (visit) => (visit.ok ? setMoved({ ...visit, from: plan.id }) : notMoved(visit.why)),
      (error) => notMoved(whyNotKept(error)),
    )
  return (
    <div className="search">
      <p>{w.another({ foils: numbers, plan: anotherDayName(plan) })}</p>
      <button
        type="button"
        className="button"
        onClick={() => commit({ chapter: "timing", code: "bring-back" }, bringBack)}
      >
        {w.bringBack}
      </button>
      <button type="button" className="button" onClick={() => void move()}>
        {w.ownVisit}
      </button>
    </div>
  )
}

const notMoved = (why: NotKept) => announceRefusal(words().timing.setAside.notMoved(notKeptWords(why)))

function OwnPlan({ id, name }: { id: string; name: string }) {
  const w = useWords().timing.setAside
  return (
    <div className="search">
      <p>{w.moved(name)}</p>
      <button type="button" className="button" onClick={() => void openOwn(id)}>
        {w.open}
      </button>
    </div>
  )
}

async function openOwn(id: string) {
  const opened = await openFromShelf(desk, id)
  if (!opened.ok) announceRefusal(words().timing.setAside.notOpened(problemWords(opened.problems[0])))
}

/** Bowls that a person, or a cure, wanted mixed afresh; the first bowl of a mix is fresh anyway. */
function FreshBowls({ plan: { sections, timing } }: { plan: Plan }) {
  const w = useWords().timing.setAside
  const foils = sections.filter(isFoil)
  const isFirst = (id: string) => {
    const foil = foils.find((each) => each.id === id)
    const isFirstOf = (mix: string) => foils.find((each) => isCoatedWith(each, mix))?.id === id
    return foil !== undefined && coatsOf(foil).every(({ mix }) => isFirstOf(mix))
  }
  const numbers = foils
    .filter(({ id }) => timing?.freshAt?.includes(id) && !isFirst(id))
    .map(({ mapNumber }) => mapNumber)
  if (numbers.length === 0) return null
  return (
    <div className="search">
      <p>{w.fresh(numbers)}</p>
      <button
        type="button"
        className="button"
        onClick={() => commit({ chapter: "timing", code: "usual-bowls" }, setTiming({ freshAt: [] }))}
      >
        {w.usualBowls}
      </button>
    </div>
  )
}

/** The drying that a fix gave up. */
function Damp({ plan: { timing } }: { plan: Plan }) {
  const w = useWords().timing.setAside
  if (timing?.isDried !== false) return null
  return (
    <div className="search">
      <p>{w.damp}</p>
      <button type="button" className="button" onClick={() => changeTiming("set-drying", { isDried: true })}>
        {w.dry}
      </button>
    </div>
  )
}
