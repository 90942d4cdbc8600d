import type { Words } from "../en/words"
import type { Tools } from "../tools"
import { cards } from "./cards"
import { cautions } from "./cautions/cautions"
import { chair } from "./chair/chair"
import { client } from "./client/client"
import { questions } from "./client/questions"
import { command } from "./command"
import { common } from "./common/common"
import { comparing } from "./comparing"
import { formula } from "./formula/formula"
import { offline } from "./offline"
import { placement } from "./placement/placement"
import { plans } from "./plans/plans"
import { problems } from "./problems/problems"
import { record } from "./record"
import { sheets } from "./sheets/sheets"
import { teaching } from "./teaching"
import { techniques } from "./techniques/techniques"
import { timing } from "./timing/timing"
import { weighing } from "./weighing"

/** German. Buttons are infinitives, sentences say "Sie"; the person in the chair is "der Gast", whoever it is. */
export const words = (tools: Tools): Words => {
  const names = common(tools)
  const clientWords = client(tools, names)
  return {
    common: names,
    problems: problems(tools, names),
    plans: plans(tools, names),
    client: clientWords,
    cautions: cautions(tools, { ...names, questions }),
    cards: cards(tools),
    offline: offline(tools),
    placement: placement(tools, names),
    techniques: techniques(tools, names),
    formula: formula(tools, names),
    weighing: weighing(tools, names),
    timing: timing(tools),
    chair: chair(tools),
    sheets: sheets(tools, names),
    record: record(tools, names, clientWords),
    teaching: teaching(tools, names),
    comparing: comparing(tools, names),
    command: command(tools),
  }
}
