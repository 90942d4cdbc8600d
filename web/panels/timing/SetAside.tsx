import { useState } from "react"
import { isFoil } from "../../../geometry/section/section"
import { laterVisit } from "../../core/document/laterVisit"
import type { Plan } from "../../core/document/schema"
import { bringBack } from "../../core/edits/plan/keepForAnotherDay"
import { setTiming } from "../../core/edits/plan/setTiming"
import { announceRefusal } from "../../session/announcements"
import { commit } from "../../session/commit"
import { whyNotKept } from "../../storage/shelfWords"
import { desk, openFromShelf, planTitle } from "../plans/shelfActions"
import { moveToOwnVisit } from "./moveToOwnVisit"

/** What cures have set aside in the plan, and the way back from each. */
export const SetAside = ({ plan }: { plan: Plan }) => (
  <>
    <AnotherDay plan={plan} />
    <FreshBowls plan={plan} />
  </>
)

function AnotherDay({ plan }: { plan: Plan }) {
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
      <p>
        Kept for another day: {foilsText(numbers)}. They are not in the mix, the clock or the printed map.
        Planned as a visit of their own they leave this plan, for “{planTitle(laterVisit(plan))}” on the
        shelf; one undo brings them back here, and leaves that plan where it is.
      </p>
      <button
        type="button"
        className="button"
        onClick={() => commit("Bring the foils of another day back", bringBack)}
      >
        Bring them back today
      </button>
      <button type="button" className="button" onClick={() => void move()}>
        Plan them as a visit of their own
      </button>
    </div>
  )
}

const notMoved = (why: string) => announceRefusal(`The foils stay here: their own plan was not kept. ${why}`)

const OwnPlan = ({ id, name }: { id: string; name: string }) => (
  <div className="search">
    <p>The foils of another day are now in “{name}”, on the shelf.</p>
    <button type="button" className="button" onClick={() => void openOwn(id)}>
      Open that plan
    </button>
  </div>
)

async function openOwn(id: string) {
  const opened = await openFromShelf(desk, id)
  if (!opened.ok) announceRefusal(`That plan was not opened: ${opened.problems[0].expected}`)
}

/** Bowls that a person, or a cure, wanted mixed afresh; the first bowl of a mix is fresh anyway. */
function FreshBowls({ plan: { sections, timing } }: { plan: Plan }) {
  const foils = sections.filter(isFoil)
  const isFirst = (id: string) => {
    const foil = foils.find((each) => each.id === id)
    return foils.find(({ mix }) => mix === foil?.mix)?.id === id
  }
  const numbers = foils
    .filter(({ id }) => timing?.freshAt?.includes(id) && !isFirst(id))
    .map(({ mapNumber }) => mapNumber)
  if (numbers.length === 0) return null
  return (
    <div className="search">
      <p>A bowl is mixed afresh at {foilsText(numbers)}.</p>
      <button
        type="button"
        className="button"
        onClick={() => commit("Share out the bowls as usual", setTiming({ freshAt: [] }))}
      >
        Share out the bowls as usual
      </button>
    </div>
  )
}

const foilsText = (numbers: readonly number[]) =>
  `${numbers.length === 1 ? "foil" : "foils"} ${numbers.join(", ")}`
