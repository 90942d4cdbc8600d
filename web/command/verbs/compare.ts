import { type Learner, whoseFiles } from "../../core/classes/classList"
import { classTableText, type Marked } from "../../core/classes/classMarks"
import type { ArgumentProblem } from "../../core/command/argumentProblem"
import { type Comparison, compare as compareWith } from "../../core/compare/compare"
import {
  type Measured,
  measuredCriteria,
  type Tolerances,
  usualTolerances,
} from "../../core/compare/differences"
import type { Model } from "../../core/compare/modelOn"
import type { Plan } from "../../core/document/schema"
import { fileStem } from "../../core/file/fileName"
import { plainLetters } from "../../core/text/plainLetters"
import { say } from "../../words/say"
import { assessmentSheets } from "../input/assessmentSheets"
import { classSentences, openClass } from "../input/openClass"
import { readPlan } from "../input/openFile"
import { modelMeant } from "../input/openTechnique"
import { paperMeant, wrongPaper } from "../input/paper"
import { knownLanguage } from "../input/spokenLanguage"
import { done, type Outcome, problemsOf, type Request, refuse, refuseTyped, type Verb } from "../input/verb"
import { type Made, writeFiles } from "../input/writeFiles"
import { comparisonObject } from "../output/comparisonObject"

/** Learners' plans held against a model: a table, and for a class its marks and a sheet each. */
export const compare: Verb = {
  usage:
    "MODEL LEARNER... [--names class.csv] [--out table.csv] [--sheets FOLDER] [--within hairline=2,...] [--paper a4|letter] [--language TAG]",
  takesFile: "many",
  options: ["names", "out", "sheets", "within", "paper", "messages"],
  async run(request) {
    const [file, ...learners] = request.files ?? []
    const { names, out, sheets, within } = request.options
    const language = knownLanguage(request.options.language ?? "en-GB") ?? "en-GB"
    const paper = paperMeant(request.options.paper, language)
    const allowed = tolerancesIn(within)
    const problems: ArgumentProblem[] = [
      ...(learners.length === 0 ? [{ code: "learner-missing" as const }] : []),
      ...(paper === null ? [wrongPaper(request.options.paper)] : []),
      ...("found" in allowed
        ? [{ code: "within-unusable" as const, found: allowed.found, known: measuredCriteria }]
        : []),
      ...(names !== undefined && out === undefined && sheets === undefined
        ? [{ code: "table-out-alone" as const }]
        : []),
    ]
    if (problems.length > 0 || paper === null || "found" in allowed) return refuseTyped(request, problems)
    const found = modelMeant(file, request)
    const who = whoOf(learners, request)
    const plans = who.ok ? plansOf(who.learners, request) : { ok: true as const, plans: [] }
    if (!found.ok || !who.ok || !plans.ok)
      return refuse(...problemsOf(found), ...problemsOf(who), ...problemsOf(plans))
    const marked = plans.plans.map(
      ({ plan, ...learner }): Told => ({
        ...learner,
        plan,
        comparison: compareWith(found.model, plan, allowed),
      }),
    )
    const made: Made[] = out === undefined ? [] : [{ path: out, bytes: encoded(classTableText(marked)) }]
    if (sheets !== undefined)
      made.unshift(
        ...(await assessmentSheets(
          marked.map((each) => ({ ...each, learner: each.name, allowed, title: found.name })),
          { folder: sheets, paper, language },
          request,
        )),
      )
    const failed = writeFiles(made, request.desk, sheets)
    return failed ? refuseTyped(request, [failed]) : answer(found, marked, { allowed, made }, request)
  },
}

export type Told = Marked & { stem: string; plan: Plan; comparison: Comparison }

const encoded = (text: string) => new TextEncoder().encode(text)

function answer(
  { name }: { name: string; model: Model },
  marked: readonly Told[],
  { allowed, made }: { allowed: Tolerances; made: readonly Made[] },
  { words }: Request,
): Outcome {
  return done({
    model: name,
    tolerances: allowed,
    written: made.map(({ path }) => path),
    learners: marked.map(({ name: learner, file, comparison }) => ({
      name: learner,
      file,
      ...comparisonObject(comparison, words),
    })),
  })
}

/** The tolerances that were typed over the usual ones; what cannot be read as found. */
function tolerancesIn(typed: string | undefined): Tolerances | { found: string } {
  const allowed: Record<Measured, number> = { ...usualTolerances }
  for (const part of typed?.split(",") ?? []) {
    const [name, value, ...more] = part.split("=").map((each) => each.trim())
    const criterion = measuredCriteria.find((each) => each === name)
    const number = /^\d+(\.\d+)?$/.test(value ?? "") ? Number(value) : 0
    if (!criterion || !(number > 0) || more.length > 0) return { found: part }
    allowed[criterion] = number
  }
  return allowed
}

type Who = Pick<Learner, "name" | "file" | "stem">

/** Whose the files are: as the list of the class says, else each by the name of its file. */
function whoOf(
  files: readonly string[],
  request: Request,
): { ok: true; learners: readonly Who[] } | { ok: false; problems: string[] } {
  const { names } = request.options
  if (names === undefined) return byFileName(files, request)
  const group = openClass(names, request, { withFile: true })
  if (!group.ok) return group
  const whose = whoseFiles(group.learners, files)
  if (!whose.ok) return { ok: false, problems: classSentences(names, whose.problems, request) }
  return {
    ok: true,
    learners: group.learners.map((learner) => ({
      ...learner,
      file: whose.files.get(learner) ?? learner.file,
    })),
  }
}

function byFileName(files: readonly string[], request: Request) {
  const learners = files.map((file): Who => {
    const name = baseOf(file).replace(/(\.partline)?\.json$/i, "")
    return { name, file, stem: fileStem(plainLetters(name), "learner") }
  })
  const twice = learners.find(({ stem }, i) => learners.findIndex((each) => each.stem === stem) < i)
  if (!twice) return { ok: true as const, learners }
  return {
    ok: false as const,
    problems: [say(request.words.command.problems, { code: "learner-twice" as const, file: twice.file })],
  }
}

const baseOf = (path: string) => path.slice(Math.max(path.lastIndexOf("/"), path.lastIndexOf("\\")) + 1)

function plansOf(
  learners: readonly Who[],
  request: Request,
): { ok: true; plans: readonly (Who & { plan: Plan })[] } | { ok: false; problems: string[] } {
  const read = learners.map((learner) => ({ learner, opened: readPlan({ ...request, file: learner.file }) }))
  const problems = read.flatMap(({ learner, opened }) =>
    opened.ok ? [] : opened.problems.map((problem) => `${learner.file}: ${problem}`),
  )
  if (problems.length > 0) return { ok: false, problems }
  return {
    ok: true,
    plans: read.flatMap(({ learner, opened }) => (opened.ok ? [{ ...learner, plan: opened.plan }] : [])),
  }
}
