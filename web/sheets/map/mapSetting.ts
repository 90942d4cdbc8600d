import type { Section } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import type { Measured } from "../../core/figures/measured"
import type { PaperView } from "../../drawing/headDrawing"
import type { Paper } from "../pens/page"
import type { Block } from "../setting/block"
import type { Press } from "../setting/press"

/** All that the parts of one placement map have in common. */
export type MapSetting = {
  plan: Plan
  figures: Measured
  paper: Paper
  press: Press
  /** The front view changed over left and right, as the client is seen in the mirror. */
  mirror: boolean
  /** What stands under the heading of each page while the plan is not cleared. */
  alert: Block
  /** The views printed, each with the sections that are named there. */
  named: ReadonlyMap<PaperView, readonly Section[]>
}

export const gutterMm = 4

/** Width inside the margins, mm, and of half of it. */
export const innerMm = ({ paper }: Pick<MapSetting, "paper">) => paper.widthMm - 2 * paper.marginMm
export const halfMm = (setting: Pick<MapSetting, "paper">) => (innerMm(setting) - gutterMm) / 2
