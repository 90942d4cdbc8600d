import { techniques } from "../../../presets/techniques/techniques"
import type { Plan } from "../../core/document/schema"
import { aimOf, faultsOf, selfChecks, toolsOf } from "../../core/teaching/teachingPlan"
import { techniqueLaid } from "../../core/teaching/techniqueLaid"
import type { LaidFrom } from "../../core/technique/lessonSchema"
import { stillLaid } from "../../core/technique/stillLaid"
import type { Words } from "../en/words"
import { say } from "../say"
import { houseTechnique } from "./houseTechnique"

/** What a class reads of a plan, in words: the drawing, its times and its cautions come beside it. */
export type LessonWords = {
  /** Nothing where neither the educator nor a technique nor the plan has a name for it. */
  title: string
  aim: string
  tools: readonly string[]
  /** How it is done as somebody wrote it; none where there is only the drawing. */
  steps: readonly string[]
  faults: readonly { fault: string; cause: string; cure: string }[]
  checks: readonly string[]
}

type Told = { name: string; aim: string; notes: string; steps: readonly string[] }

/** The educator's own words, else those of the techniques it was laid from, else what can be told from the drawing. */
export function lessonWords(plan: Plan, words: Words): LessonWords {
  const { teaching } = words
  const told = toldOf(plan, words)
  const own = plan.lesson?.own ?? {}
  const drawn = () => aimOf(plan).map((line) => say(teaching.aim, line))
  const aims = told.length > 0 ? told.map(({ aim, notes }) => `${aim} ${notes}`.trim()) : drawn()
  return {
    title: own.title ?? (told.map(({ name }) => name).join(" + ") || plan.name.trim()),
    aim: own.aim ?? aims.join(" "),
    tools: own.tools ?? toolsOf(plan).map((line) => say(teaching.tools, line)),
    steps: own.steps ?? told.flatMap(({ steps }) => steps),
    faults: own.faults ?? faultsOf(plan).map((name) => teaching.faults[name]),
    checks: own.checks ?? selfChecks(plan).map((check) => say(teaching.checks, check)),
  }
}

/** The techniques of a plan in words: those it keeps, else the one of the house that it holds as it is laid. */
function toldOf(plan: Plan, words: Words): Told[] {
  const laid = stillLaid(plan)
  if (laid.length > 0) return laid.flatMap(({ source }) => toldFrom(source, words) ?? [])
  const found = techniqueLaid(plan)
  return found ? [houseTechnique(found.house, words.techniques, found.values)] : []
}

/** One of the house that this Partline does not know says nothing. */
function toldFrom(from: LaidFrom, words: Words): Told | null {
  if (!("house" in from)) return from
  const house = techniques.find(({ id }) => id === from.house)
  return house ? houseTechnique(house, words.techniques, from.values) : null
}
