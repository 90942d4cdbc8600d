import type { Range } from "../../../geometry/hair/tradeFigures"
import { coatsOf } from "../../../geometry/section/section"
import { clearanceOf } from "../../core/cautions/clearance"
import type { ArgumentProblem } from "../../core/command/argumentProblem"
import { productSheets } from "../../core/document/salon"
import type { Plan } from "../../core/document/schema"
import { calledFix } from "../../core/fixes/fix"
import { findFixes } from "../../core/fixes/fixes"
import { calledBy } from "../../core/kinds/saidPiece"
import { goalRefusal, type LiftGoal } from "../../core/lift/scheduleReady"
import { choicesOfPlan } from "../../core/schedule/choicesOfPlan"
import { findConflicts } from "../../core/schedule/conflicts"
import { type ServiceChoices, serviceOf } from "../../core/schedule/scheduleFromPlan"
import type { Service } from "../../core/schedule/scheduleInput"
import { serviceProblems } from "../../core/schedule/scheduleProblems"
import { sheetsAssumed } from "../../core/schedule/timedPlan"
import { planService, type Schedule } from "../../core/schedule/timing"
import { nowHere } from "../../session/nowHere"
import type { Words } from "../../words/en/words"
import { say } from "../../words/say"
import { readPlan } from "../input/openFile"
import { done, type Request, refuse, type Verb } from "../input/verb"
import { clearanceFields } from "./check"

export const timing: Verb = {
  usage:
    "FILE [--pace MINUTES] [--hands N] [--rinse each|together] [--from LEVEL --to LEVEL] [--booking MINUTES]",
  takesFile: true,
  options: ["pace", "hands", "rinse", "from", "to", "booking"],
  run(request) {
    const { timing: w } = request.words
    const chosen = choicesOf(request)
    if (!chosen.ok) return refuse(...chosen.problems)
    const read = readPlan(request)
    if (!read.ok) return refuse(...read.problems)
    const choices = { ...choicesOfPlan(read.plan), ...chosen.choices }
    const refused = choices.goal && goalRefusal(choices.goal)
    if (refused) return refuse(say(w.problems, refused))
    const service = serviceOf(read.plan, productSheets(read.plan), choices)
    const problems = serviceProblems(service)
    if (problems.length > 0) return refuse(...problems.map((problem) => say(w.problems, problem)))
    const told = clearanceOf(read.plan, nowHere())
    return {
      ...done({ ...clearanceFields(told, request.words), ...objectOf(service, planService(service), w) }),
      problems: [request.words.cautions.clearance.sentence(told), ...notesOn(read.plan, choices, w)],
    }
  },
}

/** Minutes of the service end in "AtMin", save where there is nothing else they could be; `readyMin` is minutes on. */
function objectOf(service: Service, schedule: Schedule, w: TimingWords) {
  const { foils, bowls, looksAtMin, firstOnMin, lastOnMin, rinseMin, chairMin, heat, steps } = schedule
  return {
    foils: foils.map(
      ({ id, onAtMin, rootsOnAtMin, readyMin, coatsReadyAtMin, limitAtMin, offAtMin, onMin }, at) => ({
        id,
        onAtMin,
        readyMin,
        ...coatsOn(service.foils[at], coatsReadyAtMin, rootsOnAtMin),
        limitAtMin,
        offAtMin,
        onMin,
      }),
    ),
    bowls: bowls.map(({ mix, atMin, foils: sections }) => ({ mix, atMin, sections })),
    looks: looksAtMin,
    firstOnMin,
    lastOnMin,
    rinseMin,
    chairMin,
    heat,
    steps,
    conflicts: findConflicts(service, schedule).map((clash) => ({
      rule: clash.code,
      why: say(w.clashes, calledBy(clash, service.foils)),
      sections: clash.foils,
      cures: findFixes(service, clash.code).map((fix) => say(w.fixes, calledFix(fix, service))),
    })),
  }
}

/** Of a foil with two mixes, when each of them may be ready. */
const coatsOn = (foil: Service["foils"][number], readyAtMin: readonly Range[], rootsOnAtMin?: number) =>
  foil.roots
    ? {
        coats: coatsOf(foil).map(({ part, mix }, i) => ({
          part,
          mix,
          readyAtMin: readyAtMin[i],
          ...(part === "roots" && rootsOnAtMin !== undefined && { onAtMin: rootsOnAtMin }),
        })),
      }
    : {}

type TimingWords = Words["timing"]

/** What the clock had to assume. */
const notesOn = (plan: Plan, { goal }: ServiceChoices, w: TimingWords) => [
  goal ? w.command.lift : w.command.noLift,
  ...sheetsAssumed(plan).map((assumed) => say(w.assumed, assumed)),
]

/** What the options say; the rest is the plan's to say. */
type Chosen = { ok: true; choices: Partial<ServiceChoices> } | { ok: false; problems: string[] }

function choicesOf({ options, words }: Request): Chosen {
  const { pace, hands, rinse, booking } = options
  const goal = goalOf(options)
  const typed: ArgumentProblem[] = [
    ...minutesProblem("pace", pace),
    ...choiceProblem("hands", ["1", "2"], hands),
    ...choiceProblem("rinse", ["each", "together"], rinse),
    ...minutesProblem("booking", booking),
  ]
  if (goal && "typed" in goal) typed.push(goal.typed)
  const problems = typed.map((problem) => say(words.command.problems, problem))
  if (goal && "refused" in goal) problems.push(say(words.timing.problems, goal.refused))
  if (problems.length > 0) return { ok: false, problems }
  return {
    ok: true,
    choices: {
      ...(pace !== undefined && { paceMin: always(Number(pace)), learntMin: null }),
      ...(hands !== undefined && { hands: hands === "2" ? 2 : 1 }),
      ...(rinse !== undefined && { rinse: rinse === "together" ? "together" : "each" }),
      ...(goal && "fromLevel" in goal && { goal, countsByHair: false }),
      ...(booking !== undefined && { bookingMin: Number(booking) }),
    },
  }
}

type Wrong = { typed: ArgumentProblem } | { refused: NonNullable<ReturnType<typeof goalRefusal>> }

function goalOf({ from, to }: Readonly<Record<string, string>>): LiftGoal | Wrong | null {
  if (from === undefined && to === undefined) return null
  if (from === undefined || to === undefined) return { typed: { code: "levels-together" } }
  const goal = { fromLevel: Number(from), toLevel: Number(to) }
  const refused = goalRefusal(goal)
  return refused ? { refused } : goal
}

const minutesProblem = (option: "pace" | "booking", typed: string | undefined): ArgumentProblem[] =>
  typed === undefined || (Number(typed) > 0 && Number.isFinite(Number(typed)))
    ? []
    : [{ code: "minutes-unusable", option, found: typed }]

const choiceProblem = (
  option: string,
  known: readonly string[],
  typed: string | undefined,
): ArgumentProblem[] =>
  typed === undefined || known.includes(typed) ? [] : [{ code: "not-a-choice", option, known, found: typed }]

const always = (minutes: number): Range => ({ low: minutes, mid: minutes, high: minutes })
