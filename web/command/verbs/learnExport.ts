import type { ArgumentProblem } from "../../core/command/argumentProblem"
import type { Plan } from "../../core/document/schema"
import { openPlan } from "../../core/file/planFile"
import { type LearnRow, rowNames, writeRows } from "../../core/joining/learnRow"
import { rowsOfPlans } from "../../core/joining/rowsOfPlans"
import { readWeighings } from "../../core/weighing/weighingCsv"
import { say } from "../../words/say"
import { readFile } from "../input/openFile"
import { done, type Request, refuse, refuseTyped, type Verb } from "../input/verb"

/** What a salon has learnt, from its plans and lists of weighings, as a list to pass on: numbers, and nothing of a client. */
export const learnExport: Verb = {
  usage: "FILE... --consent yes --out FILE.csv",
  takesFile: "many",
  options: ["consent", "out"],
  run(request) {
    const { out, consent } = request.options
    const typed: ArgumentProblem[] = [
      ...(consent === "yes" ? [] : [{ code: "consent-missing" as const }]),
      ...(out === undefined ? [{ code: "csv-out-missing" as const }] : []),
    ]
    if (typed.length > 0 || out === undefined) return refuseTyped(request, typed)
    const read = (request.files ?? []).map((file) => readOne({ ...request, file }))
    const problems = read.flatMap((each) => ("problems" in each ? each.problems : []))
    if (problems.length > 0) return refuse(...problems)
    const rows = [
      ...rowsOfPlans(read.flatMap((each) => ("plan" in each ? [each.plan] : []))),
      ...read.flatMap((each) => ("rows" in each ? each.rows : [])),
    ]
    if (rows.length === 0) return refuseTyped(request, [{ code: "nothing-to-learn" }])
    try {
      request.desk.writeBytes(out, new TextEncoder().encode(writeRows(rows)))
    } catch {
      return refuseTyped(request, [{ code: "cannot-write", path: out }])
    }
    const counted = rowNames.map((name) => [name, rows.filter(({ row }) => row === name).length])
    return { ...done({ out, rows: Object.fromEntries(counted) }), problems: [request.words.command.passedOn] }
  },
}

type One = { plan: Plan } | { rows: LearnRow[] } | { problems: string[] }

/** A plan, or a list of weighings: what begins with a brace is no list. */
function readOne(request: Request): One {
  const { problems, weighing } = request.words
  const named = (sentence: string) => `${request.file}: ${sentence}`
  const read = readFile(request)
  if (!read.ok) return { problems: [read.problem] }
  if (
    read.text
      .replace(/^\uFEFF/, "")
      .trimStart()
      .startsWith("{")
  ) {
    const opened = openPlan(read.text)
    return opened.ok ? opened : { problems: opened.problems.map(problems.sentence).map(named) }
  }
  const list = readWeighings(read.text)
  if (!list.ok)
    return { problems: list.problems.map((problem) => named(say(weighing.list.problem, problem))) }
  return {
    rows: list.rows.map(({ panels, hairG, strandAreaCm2, productG }) => ({
      row: "weighing",
      kind: null,
      foils: panels,
      hairG,
      strandAreaCm2,
      productG,
    })),
  }
}
