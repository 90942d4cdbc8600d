import { lazy, Suspense } from "react"
import { useStore } from "zustand"
import { addRanges } from "../../../../geometry/hair/product"
import { isFoil, type Section } from "../../../../geometry/section/section"
import type { Plan } from "../../../core/document/schema"
import { figuresOf, headOf, measured } from "../../../core/figures/measured"
import { takenTwiceWords } from "../../../core/figures/overlapWords"
import {
  areaText,
  countText,
  gramsNumber,
  gramsRange,
  hairsNumber,
  hairsRangeText,
  mmText,
} from "../../../core/text/figureText"
import { directionText, kindWords, landmarkWords } from "../../../core/text/words"
import { type Draft, draftStore } from "../../../session/draftStore"
import { isHairShown, sessionStore } from "../../../session/sessionStore"
import { usePlan, useSession } from "../../../session/usePlan"

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
  const { partingMm, areaCm2, hairs, strandAreaCm2, productG } = figuresOf(section, plan)
  const { start, end } = section.depthMm
  const head = headOf(plan)
  const { alongMm, behindMm } = head.hairline.coordinates(section.parting[section.parting.length >> 1])
  return (
    <div className="foot" aria-hidden="true">
      <strong className="live">
        {kindWords[section.kind]}
        {isFoil(section) && ` ${section.mapNumber}`}
      </strong>
      <Figure value={mmText(partingMm)} words={`× ${Math.round(((start + end) / 2) * 10) / 10} mm`} />
      <Figure value={mmText(behindMm)} words={`behind hairline, ${landmarkWords(alongMm, head)}`} />
      <Figure value={directionText(section, head)} words="" />
      <Figure value={areaText(areaCm2)} words="scalp" />
      {isFoil(section) && (
        <>
          <Figure value={hairsNumber(hairs)} words="hairs" />
          <Figure value={areaText(strandAreaCm2)} words="hair to coat" />
          <Figure value={`${gramsNumber(productG.mid)} g`} words={`product, ${gramsRange(productG)}`} />
        </>
      )}
    </div>
  )
}

function LiveTotals({ label, changed, plan }: Draft) {
  const foils = changed.filter(isFoil).map((foil) => figuresOf(foil, plan))
  const productG = addRanges(foils.map((figures) => figures.productG))
  return (
    <div className="foot" aria-hidden="true">
      <strong className="live">{label}</strong>
      <Figure value={countText(changed.length, "section")} words="more" />
      {foils.length > 0 && (
        <>
          <Figure
            value={areaText(foils.reduce((sum, { strandAreaCm2 }) => sum + strandAreaCm2, 0))}
            words="hair to coat"
          />
          <Figure value={`${gramsNumber(productG.mid)} g`} words={`product, ${gramsRange(productG)}`} />
        </>
      )}
    </div>
  )
}

function Totals() {
  const plan = usePlan((open) => open)
  const figures = measured(plan)
  const { totals } = figures
  const less = takenTwiceWords(figures)
  if (totals.foils === 0)
    return (
      <div className="foot">
        <span className="aside">Nothing drawn yet: hairs, hair to coat and grams show here.</span>
        <LetItFall />
      </div>
    )
  return (
    <section className="foot" aria-label="Totals">
      <Figure value={countText(totals.foils, "foil")} words="" />
      <Figure value={hairsRangeText(totals.hairs)} words="hairs" />
      <Figure value={areaText(totals.strandAreaCm2)} words="hair to coat" />
      <Figure
        value={`${gramsNumber(totals.productG.mid)} g`}
        words={`product, ${gramsRange(totals.productG)}`}
      />
      <Suspense>
        <FootMinutes plan={plan} />
      </Suspense>
      <LetItFall />
      <span className="aside">{less ? `${less}.` : "Estimates."} Mix at the upper figure.</span>
    </section>
  )
}

const LetItFall = () => (
  <button
    type="button"
    className="button"
    onClick={() => sessionStore.setState({ isFalling: true, mapMin: null, selectedIds: [] })}
  >
    Let it fall
  </button>
)

const Figure = ({ value, words }: { value: string; words: string }) => (
  <span className="figure">
    <b>{value}</b> {words}
  </span>
)
