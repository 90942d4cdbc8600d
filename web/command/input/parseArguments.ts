import type { Verb } from "./verb"

export type Parsed =
  | { ok: true; file: string; options: Readonly<Record<string, string>> }
  | { ok: false; problems: string[] }

/** Sort what was typed after a verb into its file and its options; whatever the verb does not know is refused. */
export function parseArguments(typed: readonly string[], verb: Pick<Verb, "options" | "takesFile">): Parsed {
  const files: string[] = []
  const options: Record<string, string> = {}
  const problems: string[] = []
  for (let i = 0; i < typed.length; i++) {
    if (!/^-./.test(typed[i])) {
      files.push(typed[i])
      continue
    }
    const [name, joined] = splitOption(typed[i])
    const value = joined ?? (isValue(typed[i + 1]) ? typed[++i] : "")
    if (!Object.hasOwn(verb.options, name)) problems.push(unknownOption(name, verb.options))
    else if (Object.hasOwn(options, name)) problems.push(`--${name} is given twice: expected it once.`)
    else if (value === "") problems.push(`--${name}: expected a value after it.`)
    options[name] = value
  }
  problems.push(...fileProblems(files, verb.takesFile))
  return problems.length > 0 ? { ok: false, problems } : { ok: true, file: files[0] ?? "", options }
}

function splitOption(typed: string): [name: string, value: string | undefined] {
  const option = typed.replace(/^-+/, "")
  const equals = option.indexOf("=")
  return equals < 0 ? [option, undefined] : [option.slice(0, equals), option.slice(equals + 1)]
}

const isValue = (typed: string | undefined) => typed !== undefined && !typed.startsWith("--")

function unknownOption(name: string, options: Verb["options"]): string {
  const known = Object.keys(options).map((each) => `--${each}`)
  return `--${name} is not an option of this verb: expected ${known.length > 0 ? known.join(", ") : "no option"}.`
}

function fileProblems(files: readonly string[], takesFile: boolean): string[] {
  if (!takesFile) return files.map((file) => `"${file}" is not expected here: this verb takes no file.`)
  if (files.length === 0) return ["FILE is missing: expected the path of a plan."]
  return files.slice(1).map((file) => `"${file}" is one file too many: expected the path of one plan.`)
}
