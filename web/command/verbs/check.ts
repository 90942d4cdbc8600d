import type { Finding } from "../../core/cautions/cautions"
import { type Clearance, clearanceOf } from "../../core/cautions/clearance"
import { nowHere } from "../../session/nowHere"
import type { Words } from "../../words/en/words"
import { say } from "../../words/say"
import { readPlan } from "../input/openFile"
import { refuse, type Verb } from "../input/verb"

/** What ends the command, by the state of the plan. */
const exits = { stop: 1, "not-asked": 3, cleared: 0 } as const satisfies Record<Clearance["state"], number>

export const check: Verb = {
  usage: "FILE",
  takesFile: true,
  options: [],
  run(request) {
    const read = readPlan(request)
    if (!read.ok) return refuse(...read.problems)
    const { cautions } = request.words
    const told = clearanceOf(read.plan, nowHere())
    return {
      exit: exits[told.state],
      object: { ...clearanceFields(told, request.words), ...findingFields(told, request.words) },
      problems: [
        cautions.clearance.sentence(told),
        ...told.stops.map(({ why }) => say(cautions.why, why)),
        ...told.notAsked.map((thing) => say(cautions.notAsked, thing)),
      ],
    }
  },
}

/** The state of a plan as every verb prints it. */
export const clearanceFields = (told: Clearance, { cautions }: Words) => ({
  clearance: {
    state: told.state,
    day: told.day,
    stops: told.stops.length,
    notAsked: told.notAsked.length,
    words: cautions.clearance.sentence(told),
  },
})

function findingFields(told: Clearance, words: Words) {
  const { cautions } = words
  return {
    stops: told.stops.map((finding) => findingOf(finding, words)),
    notAsked: told.notAsked.map((thing) => ({ ...thing, words: say(cautions.notAsked, thing) })),
    cautions: told.cautions.map((finding) => findingOf(finding, words)),
    notKnown: told.notKnown.map((thing) => ({ ...thing, words: say(cautions.notKnown, thing) })),
  }
}

/** Codes for who reads them by machine, sentences beside them. */
const findingOf = (
  { rule, why, decides, source, passable, letter, mixes, pass, lapsed, answered }: Finding,
  { cautions }: Words,
) => ({
  rule,
  found: why,
  why: say(cautions.why, why),
  decides,
  mayOverride: passable,
  letterAnswers: letter,
  source: cautions.sources[source],
  ...(mixes ? { mixes } : {}),
  ...(pass ? { overridden: { reason: pass.reason, by: pass.by } } : {}),
  ...(lapsed && !pass
    ? { wasOverridden: { on: lapsed.on ?? null, reason: lapsed.reason, by: lapsed.by } }
    : {}),
  ...(answered ? { letter: { from: answered.from, dated: answered.dated } } : {}),
})
