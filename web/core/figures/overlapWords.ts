import { isFoil, type Section } from "../../../geometry/section/section"
import { capital } from "../text/capital"
import { areaText, gramsRange } from "../text/figureText"
import type { Measured } from "./measured"
import type { Overlap } from "./overlaps"

/** What is said of hair that two sections take. */

const nameOf = (section: Section) =>
  isFoil(section) ? String(section.mapNumber) : section.name || "left-out hair"
export const foilName = (section: Section) => (isFoil(section) ? `foil ${nameOf(section)}` : nameOf(section))

export const overlapWords = ({ earlier, later, areaCm2 }: Overlap) =>
  isFoil(later)
    ? `${capital(foilName(later))} takes ${areaText(areaCm2)} of the hair ${isFoil(earlier) ? "of" : "kept out in"} ${foilName(earlier)}.`
    : `${capital(foilName(later))} lies on ${areaText(areaCm2)} of the hair of ${foilName(earlier)}.`

const mostNamed = 3

/** How much less the totals are than the rows together, and by whom the hair is taken twice; null when no hair is. */
export function takenTwiceWords({ overlaps, takenTwice: { productG } }: Measured): string | null {
  const counted = overlaps.filter(({ later }) => isFoil(later))
  if (counted.length === 0) return null
  const pairs = counted
    .slice(0, mostNamed)
    .map(({ earlier, later }) => `${nameOf(earlier)} and ${nameOf(later)}`)
  const more = counted.length - pairs.length
  const others = more > 0 ? [`${more} more ${more === 1 ? "pair" : "pairs"}`] : []
  return `${gramsRange(productG)} less: hair taken twice, by ${[...pairs, ...others].join("; ")}`
}
