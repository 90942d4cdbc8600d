import { type PaperName, papers } from "../../presets/sheets/papers"
import type { Plan } from "../core/document/schema"
import type { SheetOptions } from "./setting/sheetOptions"
import { stopsAtPrintTime } from "./stopsAtPrintTime"

type Chosen = Pick<SheetOptions, "mirror" | "language" | "words"> & { paper: PaperName }

/** How a sheet is set: what was chosen, and what is true of the plan at this hour and place. */
export const optionsOf = (plan: Plan, { paper, ...chosen }: Chosen): SheetOptions => ({
  ...chosen,
  paper: papers[paper],
  ...stopsAtPrintTime(plan, chosen.words),
})
