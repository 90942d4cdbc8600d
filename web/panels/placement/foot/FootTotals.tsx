import { lazy, Suspense } from "react"
import { isFoil } from "../../../../geometry/section/section"
import { foilCount } from "../../../core/figures/foilCount"
import { measured } from "../../../core/figures/measured"
import { takenTwiceOf } from "../../../core/figures/takenTwice"
import { pieceOf } from "../../../core/kinds/kindRecords"
import { sessionStore } from "../../../session/sessionStore"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { Figure } from "./Figure"

/** The clock comes after the head. */
const FootMinutes = lazy(async () => ({ default: (await import("./FootMinutes")).FootMinutes }))

/** Of all that is drawn. */
export function FootTotals() {
  const { common, placement } = useWords()
  const w = placement.foot
  const t = common.figures
  const plan = usePlan((open) => open)
  const figures = measured(plan)
  const { totals } = figures
  const less = takenTwiceOf(figures)
  const foils = plan.sections.filter(isFoil)
  if (foils.length === 0)
    return (
      <div className="foot">
        <span className="aside">{w.empty}</span>
        <HairDown />
      </div>
    )
  return (
    <section className="foot" aria-label={w.totals}>
      <Figure value={w.foils(foilCount(foils, plan), pieceOf(foils))} words="" />
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
