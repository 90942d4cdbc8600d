import type { Words } from "../words/en/words"
import { type Language, languageNames, loadWords } from "../words/every/languages"
import { help, overview } from "./help"
import { parseArguments } from "./input/parseArguments"
import { toJson } from "./input/significant"
import { knownLanguage } from "./input/spokenLanguage"
import { type Desk, type Outcome, refuseTyped } from "./input/verb"
import { type VerbName, verbNames, verbs } from "./verbs"

export type Answer = { exit: number; out: string; err: string }

/** Run one command line: JSON for standard output, sentences for standard error, and the exit code. */
export async function runCommand(typed: readonly string[], desk: Desk): Promise<Answer> {
  const [name, rest] = verbTyped(typed)
  const english = await loadWords("en-GB")
  if (name === undefined || name === "--help") return { exit: name ? 0 : 2, out: "", err: overview(english) }
  if (!isVerb(name))
    return answer(refuseTyped({ words: english }, [{ code: "unknown-verb", verb: name, known: verbNames }]))
  const language = languageOf(rest, name)
  if (typeof language === "object") return answer(refuseTyped({ words: english }, [language]))
  const words = await loadWords(language)
  return rest.includes("--help")
    ? { exit: 0, out: "", err: help(name, words) }
    : answer(await runVerb(name, rest, { desk, words }))
}

/** A verb of two words, "learn export", is one. */
function verbTyped([first, second, ...rest]: readonly string[]): [
  name: string | undefined,
  rest: readonly string[],
] {
  const pair = `${first} ${second}`
  if (second !== undefined && isVerb(pair)) return [pair, rest]
  return [first, second === undefined ? [] : [second, ...rest]]
}

const isVerb = (name: string): name is VerbName => Object.hasOwn(verbs, name)

async function runVerb(name: VerbName, typed: readonly string[], around: { desk: Desk; words: Words }) {
  const { takesFile, options, run } = verbs[name]
  const parsed = parseArguments(typed, { takesFile, options: [...options, "language"] })
  return parsed.ok ? run({ ...parsed, ...around }) : refuseTyped(around, parsed.problems)
}

/** The language sentences are said in; of a sheet, which has a language of its own, that of its messages. */
function languageOf(typed: readonly string[], name: VerbName) {
  const option = verbs[name].options.includes("messages") ? "messages" : "language"
  const asked = [option, "language"].map((each) => [each, typedFor(typed, each)] as const)
  for (const [each, tag] of asked)
    if (tag !== undefined && !knownLanguage(tag))
      return { code: "not-a-choice" as const, option: each, known: languageNames, found: tag }
  return knownLanguage(asked[0][1] ?? "en-GB") ?? ("en-GB" satisfies Language)
}

function typedFor(typed: readonly string[], option: string): string | undefined {
  const at = typed.findIndex((each) => each === `--${option}` || each.startsWith(`--${option}=`))
  if (at < 0) return undefined
  return typed[at].includes("=") ? typed[at].slice(typed[at].indexOf("=") + 1) : typed[at + 1]
}

const answer = ({ exit, object, problems = [] }: Outcome): Answer => ({
  exit,
  out: object ? `${toJson(object)}\n` : "",
  err: problems.map((problem) => `${problem}\n`).join(""),
})
