import type { Hair } from "../../../geometry/hair/hair"
import type { Head } from "../../../geometry/scalp/head"
import { measureLeft, measureSection } from "../../../geometry/section/measureSection"
import { remainingHair } from "../../../geometry/section/remainingHair"
import type { Section } from "../../../geometry/section/section"
import { type CoatedFigures, coatedFigures, type Ruling } from "./coatFigures"

type On = { head: Head; hair: Hair; ruling: Ruling }
type Known = { whole: CoatedFigures; before: readonly Section[]; net: CoatedFigures }
const known = new WeakMap<Section, Known>()

/**
 * The figures of a section without the hair that those before it have taken, remembered for as long as they stay.
 * `whole` is the section as drawn; it is given back when nothing was taken before.
 */
export function netFigures(section: Section, whole: CoatedFigures, before: readonly Section[], on: On) {
  if (before.length === 0) return whole
  const seen = known.get(section)
  if (seen?.whole === whole && isSameList(seen.before, before)) return seen.net
  const { head, hair, ruling } = on
  const left = remainingHair(section, before, head)
  const net = coatedFigures(section, ruling, (part, figures) => {
    const drawn = whole.coats.length < 2 ? whole : measureSection(part, head, hair, figures)
    return measureLeft(part, drawn, left, { head, hair, figures })
  })
  known.set(section, { whole, before, net })
  return net
}

const isSameList = (a: readonly Section[], b: readonly Section[]) =>
  a.length === b.length && a.every((section, i) => section === b[i])
