import type { Technique } from "../../../presets/techniques/technique"
import { techniques } from "../../../presets/techniques/techniques"
import type { ArgumentProblem } from "../../core/command/argumentProblem"
import type { Plan } from "../../core/document/schema"
import { openPlan } from "../../core/file/planFile"
import { openTechnique } from "../../core/file/techniqueFile"
import type { TechniqueChoice } from "../../core/technique/techniqueChoices"
import type { Words } from "../../words/en/words"
import { houseTechnique } from "../../words/every/houseTechnique"
import { say } from "../../words/say"
import type { Desk, Request } from "./verb"

export const houseIds: readonly string[] = techniques.map(({ id }) => id)

type Around = Pick<Request, "desk" | "words">
type Refused = { ok: false; problems: string[] }

/** The technique the person named: one of the house by its id, in the words of a language, or the file of one. */
export function techniqueMeant(
  named: string,
  { desk, words }: Around,
  told: Words = words,
): { ok: true; choice: TechniqueChoice } | Refused {
  const house = houseMeant(named, told)
  if (house) return { ok: true, choice: house }
  const not: ArgumentProblem = { code: "not-a-technique", file: named, known: houseIds }
  const text = textOf(named, desk)
  if (text === null) return { ok: false, problems: [say(words.command.problems, not)] }
  const opened = openTechnique(text)
  if (opened.ok) return { ok: true, choice: { technique: opened.technique, house: null } }
  return {
    ok: false,
    problems: [say(words.command.problems, not), ...opened.problems.map(words.problems.sentence)],
  }
}

/** What learners are compared with: a technique as above, or a plan. */
export function modelMeant(
  named: string,
  { desk, words }: Around,
): { ok: true; name: string; model: { technique: Technique } | { plan: Plan } } | Refused {
  const house = houseMeant(named, words)
  if (house) return { ok: true, name: house.technique.name, model: { technique: house.technique } }
  const not: ArgumentProblem = { code: "not-a-model", file: named, known: houseIds }
  const text = textOf(named, desk)
  if (text === null) return { ok: false, problems: [say(words.command.problems, not)] }
  const technique = openTechnique(text)
  if (technique.ok) return { ok: true, name: technique.technique.name, model: technique }
  const plan = openPlan(text)
  if (plan.ok) return { ok: true, name: plan.plan.name, model: plan }
  return {
    ok: false,
    problems: [say(words.command.problems, not), ...plan.problems.map(words.problems.sentence)],
  }
}

function houseMeant(named: string, words: Words): TechniqueChoice | null {
  const house = techniques.find(({ id }) => id === named)
  return house ? { technique: houseTechnique(house, words.techniques), house } : null
}

function textOf(path: string, desk: Desk): string | null {
  try {
    return desk.readText(path)
  } catch {
    return null
  }
}
