import type { Section } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import type { Measured } from "../../core/figures/measured"
import type { PaperView } from "../../drawing/headDrawing"
import type { Fonts } from "../pens/fontFile"
import type { Paper } from "../pens/page"

/** All that the parts of one placement map have in common. */
export type MapSetting = {
  plan: Plan
  figures: Measured
  paper: Paper
  fonts: Fonts
  /** The front view changed over left and right, as the client is seen in the mirror. */
  mirror: boolean
  /** The views printed, each with the sections that are named there. */
  named: ReadonlyMap<PaperView, readonly Section[]>
}

export const gutterMm = 4

/** Width inside the margins, mm, and of half of it. */
export const innerMm = ({ paper }: Pick<MapSetting, "paper">) => paper.widthMm - 2 * paper.marginMm
export const halfMm = (setting: Pick<MapSetting, "paper">) => (innerMm(setting) - gutterMm) / 2
