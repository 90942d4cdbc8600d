import type { Words } from "../words/en/words"
import { languageNames } from "../words/every/languages"
import { type VerbName, verbNames, verbs } from "./verbs"

/** Every verb with what it prints. */
export const overview = ({ command }: Words): string =>
  [
    "npm run --silent plan -- <verb> [FILE] [options]",
    "",
    ...verbNames.map((name) => `  ${name.padEnd(14)}${command.verbs[name].summary}`),
    "",
    command.eachExplains,
    "",
  ].join("\n")

/** One verb with its options. */
export function help(name: VerbName, { command }: Words): string {
  const { summary, details, options } = command.verbs[name]
  const rows = { ...options, language: command.language(languageNames) }
  return [
    `npm run --silent plan -- ${name} ${verbs[name].usage}`.trimEnd(),
    summary,
    ...details,
    "",
    ...Object.entries(rows).map(([option, sentence]) => `  --${option.padEnd(16)}${sentence}`),
    "",
  ].join("\n")
}
