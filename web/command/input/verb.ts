/** One thing the command does. A new verb is a new file and a row in `command.ts`. */
export type Verb = {
  /** What stands after the verb, as in "FILE --out FILE.pdf". */
  usage: string
  /** What it prints, one sentence. */
  summary: string
  /** What else there is to know of the object, for `--help`. */
  details?: readonly string[]
  takesFile: boolean
  /** Each option by its name without dashes, with the sentence `--help` shows. All take a value. */
  options: Readonly<Record<string, string>>
  run(request: Request): Promise<Outcome> | Outcome
}

export type Request = {
  file: string
  options: Readonly<Record<string, string>>
  desk: Desk
}

/** What surrounds the command: files, and nothing else. Paths are as the person typed them. */
export type Desk = {
  readText(path: string): string
  writeBytes(path: string, bytes: Uint8Array): void
  readFont(file: string): Promise<Uint8Array>
}

/** What a verb answers: the object to print, or sentences that say why not, or both. */
export type Outcome = { exit: 0 | 1 | 2; object?: object; problems?: readonly string[] }

export const done = (object: object): Outcome => ({ exit: 0, object })
export const refuse = (...problems: readonly string[]): Outcome => ({ exit: 2, problems })
