import type { Hair } from "../../../geometry/hair/hair"
import type { TradeFigures } from "../../../geometry/hair/tradeFigures"
import type { Head } from "../../../geometry/scalp/head"
import { measureLeft, type SectionFigures } from "../../../geometry/section/measureSection"
import { remainingHair } from "../../../geometry/section/remainingHair"
import type { Section } from "../../../geometry/section/section"

type On = { head: Head; hair: Hair; figures: TradeFigures }
type Known = { whole: SectionFigures; before: readonly Section[]; net: SectionFigures }
const known = new WeakMap<Section, Known>()

/**
 * The figures of a section without the hair that those before it have taken, remembered for as long as they stay.
 * `whole` is the section as drawn; it is given back when nothing was taken before.
 */
export function netFigures(section: Section, whole: SectionFigures, before: readonly Section[], on: On) {
  if (before.length === 0) return whole
  const seen = known.get(section)
  if (seen?.whole === whole && isSameList(seen.before, before)) return seen.net
  const net = measureLeft(section, whole, remainingHair(section, before, on.head), on)
  known.set(section, { whole, before, net })
  return net
}

const isSameList = (a: readonly Section[], b: readonly Section[]) =>
  a.length === b.length && a.every((section, i) => section === b[i])
