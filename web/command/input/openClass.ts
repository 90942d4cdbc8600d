import { type Learner, readClass } from "../../core/classes/classList"
import type { ClassProblem } from "../../core/classes/classTable"
import { say } from "../../words/say"
import { readFile } from "./openFile"
import type { Request } from "./verb"

type Refused = { ok: false; problems: string[] }

/** The class that a list names, or what is wrong with the list, one sentence a problem. */
export function openClass(
  file: string,
  request: Request,
  needs: { withFile: boolean },
): { ok: true; learners: readonly Learner[] } | Refused {
  const read = readFile({ ...request, file })
  if (!read.ok) return { ok: false, problems: [read.problem] }
  const found = readClass(read.text, needs)
  return found.ok ? found : { ok: false, problems: classSentences(file, found.problems, request) }
}

const mostTold = 20

/** What is wrong with a list, a sentence each, beginning with the list's own name. */
export function classSentences(
  file: string,
  problems: readonly ClassProblem[],
  { words }: Pick<Request, "words">,
): string[] {
  return problems.slice(0, mostTold).map((problem) => {
    const said = `${file}: ${say<ClassProblem>(words.command.classes, problem)}`
    return problem.code === "head-size" ? `${said} ${words.problems.headSize(problem.fault)}` : said
  })
}
