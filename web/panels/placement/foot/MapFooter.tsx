import { lazy, Suspense } from "react"
import { useStore } from "zustand"
import { addRanges } from "../../../../geometry/hair/product"
import { isFoil, type Section } from "../../../../geometry/section/section"
import type { Plan } from "../../../core/document/schema"
import { figuresOf, headOf, measured } from "../../../core/figures/measured"
import { takenTwiceOf } from "../../../core/figures/takenTwice"
import { directionIn, hairlinePointOf } from "../../../core/placement/places"
import { type Draft, draftStore } from "../../../session/draftStore"
import { isHairShown, sessionStore } from "../../../session/sessionStore"
import { usePlan, useSession } from "../../../session/usePlan"
import { doneWords, useWords } from "../../../session/words"

/** The clock comes after the head. */
const FootMinutes = lazy(async () => ({ default: (await import("./FootMinutes")).FootMinutes }))

const MapFall = lazy(async () => ({ default: (await import("./MapFall")).MapFall }))

const MapMinutes = lazy(async () => ({ default: (await import("./MapMinutes")).MapMinutes }))

/** Figures at the foot of the map: of all foils, or of the one in hand while it is drawn; or the minute that the map shows. */
export function MapFooter() {
  const draft = useStore(draftStore, (state) => state.draft)
  const selectedIds = useSession((session) => session.selectedIds)
  const isInTime = useSession(({ mapMin }) => mapMin !== null)
  const isFalling = useSession(isHairShown)
  const [section, ...more] = inHand(draft?.changed ?? [], selectedIds)
  if (isFalling) return <Falling />
  if (draft?.refused) return <Words text={draft.refused} />
  if (!draft || !section) return isInTime ? <InTime /> : <Totals />
  return more.length > 0 ? <LiveTotals {...draft} /> : <LiveFigures section={section} plan={draft.plan} />
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

function LiveFigures({ section, plan }: { section: Section; plan: Plan }) {
  const { common, placement } = useWords()
  const w = placement.foot
  const t = common.figures
  const { partingMm, areaCm2, hairs, strandAreaCm2, productG } = figuresOf(section, plan)
  const { start, end } = section.depthMm
  const head = headOf(plan)
  const at = hairlinePointOf(section.parting[section.parting.length >> 1], head)
  return (
    <div className="foot" aria-hidden="true">
      <strong className="live">
        {w.inHand({ kind: section.kind, number: isFoil(section) ? section.mapNumber : null })}
      </strong>
      <Figure value={t.mm(partingMm)} words={w.depth((start + end) / 2)} />
      <Figure value={t.mm(at.behindMm)} words={w.behindHairline(at)} />
      <Figure value={common.direction(directionIn(section, head))} words="" />
      <Figure value={t.area(areaCm2)} words={w.scalp} />
      {isFoil(section) && (
        <>
          <Figure value={t.hairs(hairs)} words={w.hairs} />
          <Figure value={t.area(strandAreaCm2)} words={w.hairToCoat} />
          <Figure value={t.grams(productG.mid)} words={w.product(t.gramsRange(productG))} />
        </>
      )}
    </div>
  )
}

function LiveTotals({ label, changed, plan }: Draft) {
  const { common, placement } = useWords()
  const w = placement.foot
  const t = common.figures
  const foils = changed.filter(isFoil).map((foil) => figuresOf(foil, plan))
  const productG = addRanges(foils.map((figures) => figures.productG))
  return (
    <div className="foot" aria-hidden="true">
      <strong className="live">{doneWords(label)}</strong>
      <Figure value={w.sections(changed.length)} words={w.more} />
      {foils.length > 0 && (
        <>
          <Figure
            value={t.area(foils.reduce((sum, { strandAreaCm2 }) => sum + strandAreaCm2, 0))}
            words={w.hairToCoat}
          />
          <Figure value={t.grams(productG.mid)} words={w.product(t.gramsRange(productG))} />
        </>
      )}
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

const Figure = ({ value, words }: { value: string; words: string }) => (
  <span className="figure">
    <b>{value}</b> {words}
  </span>
)
