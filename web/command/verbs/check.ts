import type { Finding } from "../../core/cautions/cautions"
import { checkPlan } from "../../core/cautions/visitOfPlan"
import { nowHere } from "../../session/nowHere"
import { readPlan } from "../input/openFile"
import { refuse, type Verb } from "../input/verb"

export const check: Verb = {
  usage: "FILE",
  summary: "The stops that hold the mix and the cautions beside it; exit 1 when there is a stop.",
  takesFile: true,
  options: {},
  run(request) {
    const read = readPlan(request)
    if (!read.ok) return refuse(...read.problems)
    const { stops, cautions, notKnown } = checkPlan(read.plan, nowHere())
    return {
      exit: stops.length > 0 ? 1 : 0,
      object: { stops: stops.map(findingOf), cautions: cautions.map(findingOf), notKnown },
      problems: stops.map(({ why }) => why),
    }
  },
}

const findingOf = ({ rule, why, decides, source, mixes, pass }: Finding) => ({
  rule,
  why,
  decides,
  source,
  ...(mixes ? { mixes } : {}),
  ...(pass ? { passed: { reason: pass.reason, by: pass.by } } : {}),
})
