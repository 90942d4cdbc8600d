import type { Plan } from "../../core/document/schema"
import { fileName } from "../../core/file/fileName"
import { savePlan } from "../../core/file/planFile"
import { withoutHealth } from "../../core/file/withoutHealth"
import { saveFile } from "../../session/saveFile"

/** Writes a plan to a file that any Partline opens, with all that is known of the client. */
export const savePlanToFile = (plan: Plan) => saveText(savePlan(plan), fileName(plan, "partline.json"))

/** Writes a plan to a file without the client's health answers. */
export const saveForColleague = (plan: Plan) => savePlanToFile(withoutHealth(plan))

export const saveText = (text: string, name: string) => saveFile(text, name, "application/json")
