import type { Plan } from "../../core/document/schema"
import { fileName } from "../../core/file/fileName"
import { savePlan } from "../../core/file/planFile"
import { saveFile } from "../../session/saveFile"

/** Writes a plan to a file that any Partline opens. */
export const savePlanToFile = (plan: Plan) =>
  saveFile(savePlan(plan), fileName(plan, "partline.json"), "application/json")
