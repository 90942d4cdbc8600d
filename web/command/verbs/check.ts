import type { Finding } from "../../core/cautions/cautions"
import { checkPlan } from "../../core/cautions/visitOfPlan"
import { nowHere } from "../../session/nowHere"
import type { Words } from "../../words/en/words"
import { say } from "../../words/say"
import { readPlan } from "../input/openFile"
import { refuse, type Verb } from "../input/verb"

export const check: Verb = {
  usage: "FILE",
  takesFile: true,
  options: [],
  run(request) {
    const read = readPlan(request)
    if (!read.ok) return refuse(...read.problems)
    const { words } = request
    const told = findingOf(words)
    const { stops, cautions, notKnown } = checkPlan(read.plan, nowHere())
    return {
      exit: stops.length > 0 ? 1 : 0,
      object: {
        stops: stops.map(told),
        cautions: cautions.map(told),
        notKnown: notKnown.map((thing) => ({ ...thing, words: say(words.cautions.notKnown, thing) })),
      },
      problems: stops.map(({ why }) => say(words.cautions.why, why)),
    }
  },
}

/** Codes for who reads them by machine, sentences beside them. */
const findingOf =
  ({ cautions }: Words) =>
  ({ rule, why, decides, source, mixes, pass }: Finding) => ({
    rule,
    found: why,
    why: say(cautions.why, why),
    decides,
    source: cautions.sources[source],
    ...(mixes ? { mixes } : {}),
    ...(pass ? { passed: { reason: pass.reason, by: pass.by } } : {}),
  })
