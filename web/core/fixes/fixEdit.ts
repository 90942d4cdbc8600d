import { isFoil } from "../../../geometry/section/section"
import type { Edit } from "../document/edit"
import { isRefusal } from "../document/edit"
import type { Plan } from "../document/schema"
import { keepForAnotherDay } from "../edits/plan/keepForAnotherDay"
import { setTiming } from "../edits/plan/setTiming"
import { removeSections } from "../edits/sections/removeSections"
import { replaceEach } from "../edits/sections/replaceSections"
import type { Service } from "../schedule/scheduleInput"
import type { Fix } from "./fix"

/** A cure of the clock as an edit of the plan: whatever it changed in the service is changed where the plan keeps it. */
export const fixEdit = ({ code, after, left }: Fix, service: Service): Edit => {
  const edits = [
    ...timingEdits(service, after),
    ...mixEdits(service, after),
    code === "another-day" ? keepForAnotherDay(...left) : removeSections(...left),
    order(after),
  ]
  return (plan) => inTurn(plan, edits)
}

function inTurn(plan: Plan, edits: readonly Edit[]): ReturnType<Edit> {
  let now = plan
  for (const edit of edits) {
    const next = edit(now)
    if (isRefusal(next)) return next
    now = next
  }
  return now
}

function timingEdits(before: Service, after: Service): Edit[] {
  const isRinseNew = before.rinse !== after.rinse
  const isSecondHere = after.hands.length === 2 && before.hands.length === 1
  const isDryingGone = before.finish.dryingMin.mid > 0 && after.finish.dryingMin.mid === 0
  const [startsBefore, starts] = [startsOf(before), startsOf(after)]
  return [
    ...(starts.length > startsBefore.length ? [setTiming({ freshAt: starts })] : []),
    ...(isDryingGone ? [setTiming({ isDried: false })] : []),
    ...(before.bookingMin !== after.bookingMin ? [setTiming({ bookingMin: after.bookingMin })] : []),
    ...(isRinseNew ? [setTiming({ rinse: after.rinse })] : []),
    ...(isSecondHere ? [setTiming({ hands: 2 })] : []),
  ]
}

const startsOf = ({ foils }: Service) => foils.filter(({ startsBowl }) => startsBowl).map(({ id }) => id)

function mixEdits(before: Service, after: Service): Edit[] {
  const mixBefore = new Map(before.foils.map(({ id, mix }) => [id, mix]))
  return after.foils
    .filter(({ id, mix }) => mixBefore.get(id) !== mix)
    .map(({ id, mix }) => replaceEach([id], (section) => (isFoil(section) ? { ...section, mix } : section)))
}

/** Foils in the order of the service; hair left out keeps its places in the list. */
function order({ foils }: Service): Edit {
  return (plan) => {
    const byId = new Map(plan.sections.map((section) => [section.id, section]))
    const inOrder = foils.map(({ id }) => byId.get(id)).filter((section) => section !== undefined)
    const moved = new Set(inOrder)
    let next = 0
    const sections = plan.sections.map((section) => (moved.has(section) ? inOrder[next++] : section))
    return sections.every((section, i) => section === plan.sections[i]) ? plan : { ...plan, sections }
  }
}
