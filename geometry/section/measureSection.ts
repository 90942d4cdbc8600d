import { type Hair, linearGPerCm } from "../hair/hair"
import { addRanges, productG } from "../hair/product"
import type { Range, TradeFigures } from "../hair/tradeFigures"
import type { Head } from "../scalp/head"
import type { HairOnHead } from "./bandCells"
import { bandShape } from "./bandShape"
import { type BandSums, sumBand } from "./bandSums"
import { bandAreaCm2 } from "./cellAreas"
import { coatingOf } from "./coating"
import { pickedShape, stitchedColumns } from "./pickedUp"
import type { Left } from "./remainingHair"
import { isFoil, type Section } from "./section"
import { takenShare } from "./sectionKinds"

/** All that is known of one section. Derived, never stored. */
export type SectionFigures = {
  partingMm: number
  /** Scalp of the whole band. */
  areaCm2: number
  /** Share of the band that is coated: what lies within the pick-ups, less what is pushed to the root. */
  shareTaken: number
  hairs: number
  /** Mean length of the hair picked up. */
  lengthCm: number
  /** The coated length of the hair taken, what is painted thinly by how full it is. */
  hairG: number
  /** Hair to coat: width taken x length coated x faces, what is painted thinly by how full it is. */
  strandAreaCm2: number
  /** Foils used; none for a board or open air. */
  foils: number
  productG: Range
}

/** Measure a section on a head of hair. */
export function measureSection(
  section: Section,
  head: Head,
  hair: Hair,
  figures: TradeFigures,
): SectionFigures {
  const whole = bandShape(section, head)
  const areaCm2 = bandAreaCm2(whole)
  const picked = pickUp(section, { head, hair, figures, coating: coatingOf(section) })
  const partingMm = whole.alongMm[whole.stations - 1]
  const used = panels(section, partingMm, meanOf(picked.sums.coatedHairCm, picked.sums.hairs), figures)
  const taken = takenOf(section, picked.sums, { hair, figures })
  return {
    partingMm,
    areaCm2,
    shareTaken: areaCm2 > 0 ? (takenShare(section) * picked.areaCm2) / areaCm2 : 0,
    lengthCm: meanOf(picked.sums.hairCm, picked.sums.hairs),
    ...taken,
    foils: isFoil(section) && section.carrier.kind === "foil" ? used : 0,
    productG: productG({ panels: used, ...taken }, figures),
  }
}

/** The figures of a section when only so much is left of its band: the same foils hold less hair and take less product. */
export function measureLeft(
  section: Section,
  whole: SectionFigures,
  left: Left,
  { head, hair, figures }: Omit<HairOnHead, "coating">,
): SectionFigures {
  const { areasCm2 } = bandShape(section, head)
  const { sums } = pickUp(section, { head, hair, figures, coating: coatingOf(section) }, left.hair)
  const taken = takenOf(section, sums, { hair, figures })
  const gone = {
    panels: 0,
    hairG: taken.hairG - whole.hairG,
    strandAreaCm2: taken.strandAreaCm2 - whole.strandAreaCm2,
  }
  const areaCm2 = areasCm2.reduce((sum, area, cell) => sum + area * left.scalp[cell], 0)
  return { ...whole, areaCm2, ...taken, productG: addRanges([whole.productG, productG(gone, figures)]) }
}

/** What stands within a section's pick-ups, and the scalp that it grows on. */
function pickUp(section: Section, on: HairOnHead, hair?: Float64Array) {
  const shape = pickedShape(section, on.head)
  const columns = stitchedColumns(section, shape)
  const across = shape.layers - 1
  const areaCm2 = shape.areasCm2.reduce(
    (sum, area, cell) => sum + area * columns[Math.floor(cell / across)],
    0,
  )
  return { sums: sumBand(shape, on, { hair, columns }), areaCm2 }
}

function takenOf(
  section: Section,
  { hairs, coatedHairCm, coatedWidthCm2 }: BandSums,
  { hair, figures }: { hair: Hair; figures: TradeFigures },
) {
  const share = takenShare(section)
  return {
    hairs: hairs * share,
    hairG: coatedHairCm * share * linearGPerCm(hair.fibreUm, figures.hairGPerCm3),
    strandAreaCm2: coatedWidthCm2 * share * coatingOf(section).faces,
  }
}

/**
 * Panels to lay: as many foils side by side and end to end as the ribbon asks for, or one board or open-air panel,
 * which uses up no foil but loses product like one. Nothing coated, no panel.
 */
function panels(section: Section, partingMm: number, coatedCm: number, figures: TradeFigures) {
  if (!isFoil(section) || coatedCm === 0) return 0
  const { kind, widthMm, lengthMm } = section.carrier
  if (kind !== "foil") return 1
  const wide = foilsWide(partingMm, widthMm, figures)
  const long = Math.max(1, Math.ceil((10 * coatedCm - figures.foilFoldMm) / lengthMm - 1e-9))
  return wide * long
}

/** Foils of a width, mm, that lie side by side under a parting of a length, mm. */
export const foilsWide = (partingMm: number, widthMm: number, { foilMarginMm }: TradeFigures) =>
  Math.ceil(partingMm / Math.max(1, widthMm - foilMarginMm))

const meanOf = (sum: number, count: number) => (count > 0 ? sum / count : 0)
