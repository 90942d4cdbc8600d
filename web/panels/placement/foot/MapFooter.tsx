import { lazy, Suspense, useEffect } from "react"
import { useStore } from "zustand"
import type { Section } from "../../../../geometry/section/section"
import { measured } from "../../../core/figures/measured"
import { takenTwiceOf } from "../../../core/figures/takenTwice"
import { draftStore } from "../../../session/draftStore"
import { isHairShown, sessionStore } from "../../../session/sessionStore"
import { usePlan, useSession } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { Figure } from "./Figure"

/** Here before a hand can draw: they are fetched with the first look at the map. */
const live = () => import("./LiveFigures")
const LiveFigures = lazy(async () => ({ default: (await live()).LiveFigures }))
const LiveTotals = lazy(async () => ({ default: (await live()).LiveTotals }))

/** The clock comes after the head. */
const FootMinutes = lazy(async () => ({ default: (await import("./FootMinutes")).FootMinutes }))

const MapFall = lazy(async () => ({ default: (await import("./MapFall")).MapFall }))

const MapMinutes = lazy(async () => ({ default: (await import("./MapMinutes")).MapMinutes }))

/** Figures at the foot of the map: of all foils, or of the one in hand while it is drawn; or the minute that the map shows. */
export function MapFooter() {
  useEffect(() => void live().catch(() => {}), [])
  const draft = useStore(draftStore, (state) => state.draft)
  const selectedIds = useSession((session) => session.selectedIds)
  const isInTime = useSession(({ mapMin }) => mapMin !== null)
  const isFalling = useSession(isHairShown)
  const [section, ...more] = inHand(draft?.changed ?? [], selectedIds)
  if (isFalling) return <Falling />
  if (draft?.refused) return <Words text={draft.refused} />
  if (!draft || !section) return isInTime ? <InTime /> : <Totals />
  return (
    <Suspense fallback={<div className="foot" aria-busy="true" />}>
      {more.length > 0 ? <LiveTotals {...draft} /> : <LiveFigures section={section} plan={draft.plan} />}
    </Suspense>
  )
}

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

function Totals() {
  const { common, placement } = useWords()
  const w = placement.foot
  const t = common.figures
  const plan = usePlan((open) => open)
  const figures = measured(plan)
  const { totals } = figures
  const less = takenTwiceOf(figures)
  if (totals.foils === 0)
    return (
      <div className="foot">
        <span className="aside">{w.empty}</span>
        <HairDown />
      </div>
    )
  return (
    <section className="foot" aria-label={w.totals}>
      <Figure value={w.foils(totals.foils)} words="" />
      <Figure value={t.hairsRange(totals.hairs)} words={w.hairs} />
      <Figure value={t.area(totals.strandAreaCm2)} words={w.hairToCoat} />
      <Figure value={t.grams(totals.productG.mid)} words={w.product(t.gramsRange(totals.productG))} />
      <Suspense>
        <FootMinutes plan={plan} />
      </Suspense>
      <HairDown />
      <span className="aside">
        {less ? w.estimatesLess(placement.list.overlaps.takenTwice(less)) : w.estimates}
      </span>
    </section>
  )
}

function HairDown() {
  const w = useWords().placement.foot
  return (
    <button
      type="button"
      className="button"
      onClick={() => sessionStore.setState({ isFalling: true, mapMin: null, selectedIds: [] })}
    >
      {w.showHairDown}
    </button>
  )
}
