import type { Hair } from "../../../geometry/hair/hair"
import type { TradeFigures } from "../../../geometry/hair/tradeFigures"
import type { Head } from "../../../geometry/scalp/head"
import { measureLeft, type SectionFigures } from "../../../geometry/section/measureSection"
import { remainingHair } from "../../../geometry/section/remainingHair"
import type { Section } from "../../../geometry/section/section"
import { isSameList, rememberedLast } from "../memory/remembered"

type On = { head: Head; hair: Hair; figures: TradeFigures }

/**
 * The figures of a section without the hair that those before it have taken, remembered for as long as they stay.
 * `whole` is the section as drawn; it is given back when nothing was taken before.
 */
export function netFigures(section: Section, whole: SectionFigures, before: readonly Section[], on: On) {
  return before.length === 0 ? whole : netOn(section, { ...on, whole, before })
}

type Before = On & { whole: SectionFigures; before: readonly Section[] }

/** What head, hair and figures it stands on, the figures of the whole section say by being the same. */
const netOn = rememberedLast(
  (a: Before, b: Before) => a.whole === b.whole && isSameList(a.before, b.before),
  (section: Section, { whole, before, ...on }: Before) =>
    measureLeft(section, whole, remainingHair(section, before, on.head), on),
)
