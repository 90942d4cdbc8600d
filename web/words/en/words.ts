import type { Tools } from "../tools"
import { cards } from "./cards"
import { cautions } from "./cautions/cautions"
import { chair } from "./chair/chair"
import { client } from "./client/client"
import { command } from "./command"
import { type CommonWords, common } from "./common/common"
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

/**
 * British English, by the chapters of the visit: the catalogue that every other language must match. `names` are what
 * every chapter calls things by.
 */
export const words = (tools: Tools, names: CommonWords = common(tools)) => {
  const clientWords = client(tools, names)
  return {
    common: names,
    problems: problems(tools, names),
    plans: plans(tools, names),
    client: clientWords,
    cautions: cautions(tools, { ...names, questions: clientWords.questions }),
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

export type Words = ReturnType<typeof words>
