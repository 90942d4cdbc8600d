import type { ArgumentProblem } from "../../core/command/argumentProblem"
import type { Plan } from "../../core/document/schema"
import { openPlan } from "../../core/file/planFile"
import { say } from "../../words/say"
import type { Request } from "./verb"

type Read = { ok: true; text: string } | { ok: false; problem: string }

/** The text of the file the person named, or one sentence why it cannot be had. */
export function readFile({ file, desk, words }: Request): Read {
  try {
    return { ok: true, text: desk.readText(file) }
  } catch {
    return { ok: false, problem: say<ArgumentProblem>(words.command.problems, { code: "cannot-read", file }) }
  }
}

/** The plan of the file the person named, or what is wrong with it, one sentence a problem. */
export function readPlan(request: Request): { ok: true; plan: Plan } | { ok: false; problems: string[] } {
  const read = readFile(request)
  if (!read.ok) return { ok: false, problems: [read.problem] }
  const opened = openPlan(read.text)
  return opened.ok ? opened : { ok: false, problems: opened.problems.map(request.words.problems.sentence) }
}
