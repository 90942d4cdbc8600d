import type { ArgumentProblem } from "../../core/command/argumentProblem"
import type { Words } from "../../words/en/words"
import { say } from "../../words/say"

/** One thing the command does. A new verb is a new file, a row in `verbs.ts`, and its words. */
export type Verb = {
  /** What stands after the verb, as in "FILE --out FILE.pdf". */
  usage: string
  /** Whether a file stands after it: none, one, or one and more. */
  takesFile: boolean | "many"
  /** Each option by its name without dashes. All take a value. */
  options: readonly string[]
  run(request: Request): Promise<Outcome> | Outcome
}

export type Request = {
  file: string
  /** All of them, where a verb takes several. */
  files?: readonly string[] | undefined
  options: Readonly<Record<string, string>>
  desk: Desk
  /** The words that sentences are said in. */
  words: Words
}

/** What surrounds the command: files, and nothing else. Paths are as the person typed them. */
export type Desk = {
  readText(path: string): string
  writeBytes(path: string, bytes: Uint8Array): void
  readFont(file: string): Promise<Uint8Array>
  /** Folders, where there are any: the names of the files in one, and how one is deleted. */
  folders?: {
    list(path: string): readonly string[]
    remove(path: string): void
    /** Makes a folder, and those it lies in, where it is not there. */
    make?(path: string): void
  }
  /** Says to whoever waits how far long work is; where nobody looks, nothing. */
  progress?(line: string): void
}

/** What a verb answers: the object to print, or sentences that say why not, or both. */
export type Outcome = { exit: 0 | 1 | 2 | 3; object?: object; problems?: readonly string[] }

export const done = (object: object): Outcome => ({ exit: 0, object })
export const refuse = (...problems: readonly string[]): Outcome => ({ exit: 2, problems })

/** What was typed cannot be used: each reason in a sentence. */
export const refuseTyped = (
  { words }: Pick<Request, "words">,
  problems: readonly ArgumentProblem[],
): Outcome => refuse(...problems.map((problem) => say(words.command.problems, problem)))

/** What keeps something from being read, nothing where it was. */
export const problemsOf = (read: { ok: true } | { ok: false; problems: string[] }): string[] =>
  read.ok ? [] : read.problems
