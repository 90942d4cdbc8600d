import { type Hair, linearGPerCm } from "../hair/hair"
import { addRanges, productG } from "../hair/product"
import type { Range, TradeFigures } from "../hair/tradeFigures"
import type { Head } from "../scalp/head"
import type { HairOnHead } from "./bandCells"
import { bandShape } from "./bandShape"
import { type BandSums, sumBand } from "./bandSums"
import { coatingOf } from "./coating"
import type { Left } from "./remainingHair"
import { isFoil, type Section } from "./section"
import { takenShare } from "./sectionKinds"

/** All that is known of one section. Derived, never stored. */
export type SectionFigures = {
  partingMm: number
  /** Scalp of the whole band. */
  areaCm2: number
  /** Share of the band's hair that is coated: what is taken, less what is pushed to the root. */
  shareTaken: number
  hairs: number
  /** Mean length of the band's hair. */
  lengthCm: number
  /** The coated length of the hair taken. */
  hairG: number
  /** Hair to coat: width taken x length coated x faces. */
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
  const shape = bandShape(section, head)
  const coating = coatingOf(section)
  const band = sumBand(shape, { head, hair, figures, coating })
  const shareTaken = takenShare(section, shape.depthMm)
  const partingMm = shape.alongMm[shape.stations - 1]
  const used = panels(section, partingMm, meanOf(band.coatedHairCm, band.hairs), figures)
  const taken = takenOf(band, shareTaken, { hair, figures, coating })
  return {
    partingMm,
    shareTaken,
    lengthCm: meanOf(band.hairCm, band.hairs),
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
  const coating = coatingOf(section)
  const band = sumBand(bandShape(section, head), { head, hair, figures, coating }, left)
  const taken = takenOf(band, whole.shareTaken, { hair, figures, coating })
  const gone = {
    panels: 0,
    hairG: taken.hairG - whole.hairG,
    strandAreaCm2: taken.strandAreaCm2 - whole.strandAreaCm2,
  }
  return { ...whole, ...taken, productG: addRanges([whole.productG, productG(gone, figures)]) }
}

const takenOf = (
  band: BandSums,
  shareTaken: number,
  { hair, figures, coating }: Omit<HairOnHead, "head">,
) => ({
  areaCm2: band.areaCm2,
  hairs: band.hairs * shareTaken,
  hairG: band.coatedHairCm * shareTaken * linearGPerCm(hair.fibreUm, figures.hairGPerCm3),
  strandAreaCm2: band.coatedWidthCm2 * shareTaken * coating.faces,
})

/**
 * Panels to lay: as many foils side by side and end to end as the ribbon asks for, or one board or open-air panel,
 * which uses up no foil but loses product like one. Nothing coated, no panel.
 */
function panels(section: Section, partingMm: number, coatedCm: number, figures: TradeFigures) {
  if (!isFoil(section) || coatedCm === 0) return 0
  const { kind, widthMm, lengthMm } = section.carrier
  if (kind !== "foil") return 1
  const wide = foilsWide(partingMm, widthMm, figures)
  const long = Math.max(1, Math.ceil((10 * coatedCm - figures.foilFoldMm) / lengthMm))
  return wide * long
}

/** Foils of a width, mm, that lie side by side under a parting of a length, mm. */
export const foilsWide = (partingMm: number, widthMm: number, { foilMarginMm }: TradeFigures) =>
  Math.ceil(partingMm / Math.max(1, widthMm - foilMarginMm))

const meanOf = (sum: number, count: number) => (count > 0 ? sum / count : 0)
