import { lazy, Suspense, useEffect } from "react"
import { useStore } from "zustand"
import type { Section } from "../../../../geometry/section/section"
import { draftStore } from "../../../session/draftStore"
import { isHairShown } from "../../../session/sessionStore"
import { useSession } from "../../../session/usePlan"

/** Here before a hand can draw: they are fetched with the first look at the map. */
const live = () => import("./LiveFigures")
const LiveFigures = lazy(async () => ({ default: (await live()).LiveFigures }))
const LiveTotals = lazy(async () => ({ default: (await live()).LiveTotals }))

/** The totals come after the head, with the clock. */
const totals = () => import("./FootTotals")
const Totals = lazy(async () => ({ default: (await totals()).FootTotals }))

const MapFall = lazy(async () => ({ default: (await import("./MapFall")).MapFall }))

const MapMinutes = lazy(async () => ({ default: (await import("./MapMinutes")).MapMinutes }))

/** Figures at the foot of the map: of all foils, or of the one in hand while it is drawn; or the minute that the map shows. */
export function MapFooter() {
  useEffect(() => {
    live().catch(() => {})
    totals().catch(() => {})
  }, [])
  const draft = useStore(draftStore, (state) => state.draft)
  const selectedIds = useSession((session) => session.selectedIds)
  const isInTime = useSession(({ mapMin }) => mapMin !== null)
  const isFalling = useSession(isHairShown)
  const [section, ...more] = inHand(draft?.changed ?? [], selectedIds)
  if (isFalling) return <Falling />
  if (draft?.refused) return <Words text={draft.refused} />
  if (!draft || !section) return isInTime ? <InTime /> : <Counted />
  return (
    <Suspense fallback={<div className="foot" aria-busy="true" />}>
      {more.length > 0 ? <LiveTotals {...draft} /> : <LiveFigures section={section} plan={draft.plan} />}
    </Suspense>
  )
}

const Counted = () => (
  <Suspense fallback={<div className="foot" aria-busy="true" />}>
    <Totals />
  </Suspense>
)

const InTime = () => (
  <Suspense fallback={<div className="foot" aria-busy="true" />}>
    <MapMinutes />
  </Suspense>
)

const Falling = () => (
  <Suspense fallback={<div className="foot" aria-busy="true" />}>
    <MapFall />
  </Suspense>
)

/** Of a pair the one in hand: its twin shows the same. */
function inHand(changed: readonly Section[], selectedIds: readonly string[]): readonly Section[] {
  const [first, second] = changed
  if (changed.length !== 2 || first.twin !== second.id) return changed
  return [selectedIds.includes(second.id) ? second : first]
}

function Words({ text }: { text: string }) {
  return (
    <div className="foot">
      <strong className="live">{text}</strong>
    </div>
  )
}
