import { parseArguments } from "./input/parseArguments"
import { toJson } from "./input/significant"
import type { Desk, Outcome, Verb } from "./input/verb"
import { blend } from "./verbs/blend"
import { calibrate } from "./verbs/calibrate"
import { check } from "./verbs/check"
import { head } from "./verbs/head"
import { measure } from "./verbs/measure"
import { mix } from "./verbs/mix"
import { sheet } from "./verbs/sheet"
import { timing } from "./verbs/timing"
import { validate } from "./verbs/validate"

const verbs: Readonly<Record<string, Verb>> = {
  head,
  measure,
  check,
  mix,
  sheet,
  validate,
  blend,
  calibrate,
  timing,
}

export type Answer = { exit: number; out: string; err: string }

/** Run one command line: JSON for standard output, sentences for standard error, and the exit code. */
export async function runCommand(typed: readonly string[], desk: Desk): Promise<Answer> {
  const [name, ...rest] = typed
  if (name === undefined || name === "--help") return { exit: name ? 0 : 2, out: "", err: overview() }
  const verb = Object.hasOwn(verbs, name) ? verbs[name] : undefined
  if (!verb) return answer({ exit: 2, problems: [unknownVerb(name)] })
  if (rest.includes("--help")) return { exit: 0, out: "", err: help(name, verb) }
  const parsed = parseArguments(rest, verb)
  if (!parsed.ok) return answer({ exit: 2, problems: parsed.problems })
  return answer(await verb.run({ file: parsed.file, options: parsed.options, desk }))
}

const answer = ({ exit, object, problems = [] }: Outcome): Answer => ({
  exit,
  out: object ? `${toJson(object)}\n` : "",
  err: problems.map((problem) => `${problem}\n`).join(""),
})

const unknownVerb = (name: string) => `"${name}" is not a verb: expected ${Object.keys(verbs).join(", ")}.`

const overview = () =>
  [
    "npm run --silent plan -- <verb> [FILE] [options]",
    "",
    ...Object.entries(verbs).map(([name, { summary }]) => `  ${name.padEnd(10)}${summary}`),
    "",
    "Each verb explains itself with --help.",
    "",
  ].join("\n")

function help(name: string, { usage, summary, details = [], options }: Verb): string {
  const rows = Object.entries(options).map(([option, sentence]) => `  --${option.padEnd(16)}${sentence}`)
  return [
    `npm run --silent plan -- ${name} ${usage}`,
    summary,
    ...details,
    ...(rows.length > 0 ? ["", ...rows] : []),
    "",
  ].join("\n")
}
