import type { ArgumentProblem } from "../../core/command/argumentProblem"
import type { Verb } from "./verb"

export type Parsed =
  | { ok: true; file: string; files?: readonly string[]; options: Readonly<Record<string, string>> }
  | { ok: false; problems: readonly ArgumentProblem[] }

/** Sort what was typed after a verb into its file and its options; whatever the verb does not know is refused. */
export function parseArguments(typed: readonly string[], verb: Pick<Verb, "options" | "takesFile">): Parsed {
  const files: string[] = []
  const options: Record<string, string> = {}
  const problems: ArgumentProblem[] = []
  for (let i = 0; i < typed.length; i++) {
    if (!/^-./.test(typed[i])) {
      files.push(typed[i])
      continue
    }
    const [option, joined] = splitOption(typed[i])
    const value = joined ?? (isValue(typed[i + 1]) ? typed[++i] : "")
    if (!verb.options.includes(option)) problems.push({ code: "unknown-option", option, known: verb.options })
    else if (Object.hasOwn(options, option)) problems.push({ code: "given-twice", option })
    else if (value === "") problems.push({ code: "no-value", option })
    options[option] = value
  }
  problems.push(...fileProblems(files, verb.takesFile))
  if (problems.length > 0) return { ok: false, problems }
  return { ok: true, file: files[0] ?? "", ...(verb.takesFile === "many" && { files }), options }
}

function splitOption(typed: string): [name: string, value: string | undefined] {
  const option = typed.replace(/^-+/, "")
  const equals = option.indexOf("=")
  return equals < 0 ? [option, undefined] : [option.slice(0, equals), option.slice(equals + 1)]
}

const isValue = (typed: string | undefined) => typed !== undefined && !typed.startsWith("--")

function fileProblems(files: readonly string[], takesFile: Verb["takesFile"]): ArgumentProblem[] {
  if (!takesFile) return files.map((file) => ({ code: "no-file-expected", file }))
  if (files.length === 0) return [{ code: "file-missing" }]
  if (takesFile === "many") return []
  return files.slice(1).map((file) => ({ code: "one-file-too-many", file }))
}
