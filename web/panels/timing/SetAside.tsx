import { isFoil } from "../../../geometry/section/section"
import { act } from "../../plan/act"
import { announceRefusal } from "../../plan/announcements"
import { bringBack } from "../../plan/edits/keepForAnotherDay"
import { setTiming } from "../../plan/edits/setTiming"
import type { Plan } from "../../plan/schema"
import { whyNotKept } from "../../plan/shelfWords"
import { desk } from "../shelfActions"
import { openAsOwnVisit } from "./openAsOwnVisit"

/** What cures have set aside in the plan, and the way back from each. */
export const SetAside = ({ plan }: { plan: Plan }) => (
  <>
    <AnotherDay plan={plan} />
    <FreshBowls plan={plan} />
  </>
)

function AnotherDay({ plan }: { plan: Plan }) {
  const numbers = (plan.later ?? []).filter(isFoil).map(({ mapNumber }) => mapNumber)
  if (numbers.length === 0) return null
  const openOwn = () =>
    void openAsOwnVisit(desk, plan).catch((error) =>
      announceRefusal(`The other visit was not opened: ${whyNotKept(error)}`),
    )
  return (
    <div className="search">
      <p>
        Kept for another day: {foilsText(numbers)}. They are not in the mix, the clock or the printed map.
      </p>
      <button
        type="button"
        className="button"
        onClick={() => act("Bring the foils of another day back", bringBack)}
      >
        Bring them back today
      </button>
      <button type="button" className="button" onClick={openOwn}>
        Plan them as a visit of their own
      </button>
    </div>
  )
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
        onClick={() => act("Share out the bowls as usual", setTiming({ freshAt: [] }))}
      >
        Share out the bowls as usual
      </button>
    </div>
  )
}

const foilsText = (numbers: readonly number[]) =>
  `${numbers.length === 1 ? "foil" : "foils"} ${numbers.join(", ")}`
