import { fileName } from "../plan/fileName"
import { savePlan } from "../plan/planFile"
import { saveFile } from "../plan/saveFile"
import type { Plan } from "../plan/schema"

/** Writes a plan to a file that any Partline opens. */
export const savePlanToFile = (plan: Plan) =>
  saveFile(savePlan(plan), fileName(plan, "partline.json"), "application/json")
