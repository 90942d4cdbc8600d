import { addRanges } from "../../../../geometry/hair/product"
import { isFoil, type Section } from "../../../../geometry/section/section"
import type { Plan } from "../../../core/document/schema"
import { figuresOf, headOf } from "../../../core/figures/measured"
import { directionIn, hairlinePointOf } from "../../../core/placement/places"
import type { Draft } from "../../../session/draftStore"
import { doneWords, useWords } from "../../../session/words"
import { Figure } from "./Figure"

/** Of the section in hand while it is drawn. */
export function LiveFigures({ section, plan }: { section: Section; plan: Plan }) {
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

/** Of several sections in hand. */
export function LiveTotals({ label, changed, plan }: Draft) {
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
