import { type PaperName, papers } from "../../presets/sheets/papers"
import type { Plan } from "../core/document/schema"
import type { SheetOptions } from "./setting/sheetOptions"
import { stopsAtPrintTime } from "./stopsAtPrintTime"

type Chosen = Pick<SheetOptions, "mirror" | "language" | "words" | "contact"> & { paper: PaperName }

/** How a sheet is set: what was chosen, and what is true of the plan at this hour and place. */
export const optionsOf = (plan: Plan, { paper, ...chosen }: Chosen): SheetOptions => ({
  ...chosen,
  paper: papers[paper],
  ...stopsAtPrintTime(plan, chosen.words),
})

/** The options themselves while all they say of the hour is true still, else as it is now. */
export function renewed(options: SheetOptions, plan: Plan): SheetOptions {
  const now = stopsAtPrintTime(plan, options.words)
  const isTrue = now.stops === options.stops && now.alert === options.alert && now.zone === options.zone
  return isTrue ? options : { ...options, ...now }
}
