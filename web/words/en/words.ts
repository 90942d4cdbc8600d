import type { Tools } from "../tools"
import { cautions } from "./cautions/cautions"
import { chair } from "./chair/chair"
import { client } from "./client/client"
import { questions } from "./client/questions"
import { command } from "./command"
import { common } from "./common/common"
import { formula } from "./formula/formula"
import { offline } from "./offline"
import { placement } from "./placement/placement"
import { plans } from "./plans"
import { problems } from "./problems/problems"
import { record } from "./record"
import { sheets } from "./sheets"
import { teaching } from "./teaching"
import { techniques } from "./techniques/techniques"
import { timing } from "./timing/timing"
import { weighing } from "./weighing"

/** British English, by the chapters of the visit: the catalogue that every other language must match. */
export const words = (tools: Tools) => ({
  common: common(tools),
  problems: problems(tools),
  plans: plans(tools),
  client: client(tools, common(tools)),
  cautions: cautions(tools, { ...common(tools), questions }),
  offline: offline(tools),
  placement: placement(tools),
  techniques: techniques(tools),
  formula: formula(tools, common(tools)),
  weighing: weighing(tools, common(tools)),
  timing: timing(tools),
  chair: chair(tools),
  sheets: sheets(tools),
  record: record(tools),
  teaching: teaching(tools),
  command: command(tools),
})

export type Words = ReturnType<typeof words>
