import type { Hair } from "../../../geometry/hair/hair"
import type { Head } from "../../../geometry/scalp/head"
import { measureLeft, measureSection } from "../../../geometry/section/measureSection"
import { remainingHair } from "../../../geometry/section/remainingHair"
import type { Section } from "../../../geometry/section/section"
import { isSameList, rememberedLast } from "../memory/remembered"
import { type CoatedFigures, coatedFigures, type Ruling } from "./coatFigures"

type On = { head: Head; hair: Hair; ruling: Ruling }

/**
 * The figures of a section without the hair that those before it have taken, remembered for as long as they stay.
 * `whole` is the section as drawn; it is given back when nothing was taken before.
 */
export function netFigures(section: Section, whole: CoatedFigures, before: readonly Section[], on: On) {
  return before.length === 0 ? whole : netOn(section, { whole, before, on })
}

type Before = { whole: CoatedFigures; before: readonly Section[]; on: On }

/** What head, hair and figures it stands on, the figures of the whole section say by being the same. */
const netOn = rememberedLast(
  (a: Before, b: Before) => a.whole === b.whole && isSameList(a.before, b.before),
  (section: Section, { whole, before, on: { head, hair, ruling } }: Before): CoatedFigures => {
    const left = remainingHair(section, before, head)
    return coatedFigures(section, ruling, (part, figures) => {
      const drawn = whole.coats.length < 2 ? whole : measureSection(part, head, hair, figures)
      return measureLeft(part, drawn, left, { head, hair, figures })
    })
  },
)
