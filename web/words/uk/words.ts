import type { Words } from "../en/words"
import type { Tools } from "../tools"
import { cards } from "./cards"
import { cautions } from "./cautions/cautions"
import { chair } from "./chair/chair"
import { client } from "./client/client"
import { questions } from "./client/questions"
import { command } from "./command"
import { common } from "./common/common"
import { unitsInUkrainian } from "./common/units"
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

/** Ukrainian, by the chapters of the visit. */
export const words = (tools: Tools): Words => {
  const t = unitsInUkrainian(tools)
  const names = common(t)
  const clientWords = client(t, names)
  return {
    common: names,
    problems: problems(t),
    plans: plans(t),
    client: clientWords,
    cautions: cautions(t, { ...names, questions }),
    cards: cards(t),
    offline: offline(t),
    placement: placement(t),
    techniques: techniques(t),
    formula: formula(t, names),
    weighing: weighing(t, names),
    timing: timing(t),
    chair: chair(t),
    sheets: sheets(t, names),
    record: record(t, names, clientWords),
    teaching: teaching(t, names),
    comparing: comparing(t, names),
    command: command(t),
  }
}
