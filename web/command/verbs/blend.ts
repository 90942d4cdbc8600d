import { legalLimitPercent } from "../../../presets/formula/developers"
import type { ArgumentProblem } from "../../core/command/argumentProblem"
import { type BlendProblem, blend as blendBottles } from "../../core/mixing/blend"
import { isOverLegalLimit } from "../../core/mixing/strength"
import { say } from "../../words/say"
import { done, refuse, refuseTyped, type Verb } from "../input/verb"

export const blend: Verb = {
  usage: "--have PERCENTS --want PERCENT --grams GRAMS",
  takesFile: false,
  options: ["have", "want", "grams"],
  run(request) {
    const { words } = request
    const read = readOptions(request.options)
    if (!read.ok) return refuseTyped(request, read.problems)
    const [want, grams] = read.numbers
    const result = blendBottles(read.have, want, grams)
    if ("problems" in result)
      return refuse(
        ...result.problems.map(
          (problem) => `--${optionOf[problem.code]}: ${say(words.formula.mixing.blend, problem)}`,
        ),
      )
    const notes = isOverLegalLimit(want) ? [words.command.overLegalLimit(legalLimitPercent)] : []
    return { ...done({ parts: result.parts }), problems: notes }
  },
}

/** The option that a problem is about. */
const optionOf: Record<BlendProblem["code"], string> = {
  "no-bottles": "have",
  "bottle-percent": "have",
  "want-percent": "want",
  "no-amount": "grams",
  "want-too-weak": "want",
  "want-too-strong": "want",
}

type Read = { ok: true; have: number[]; numbers: number[] } | { ok: false; problems: ArgumentProblem[] }

function readOptions(options: Readonly<Record<string, string>>): Read {
  const have = options.have?.split(",").map(toNumber) ?? []
  const numbers = [options.want, options.grams].map((typed) => toNumber(typed ?? ""))
  const problems = [
    ...numberProblem("have", options.have, have),
    ...numberProblem("want", options.want, [numbers[0]]),
    ...numberProblem("grams", options.grams, [numbers[1]]),
  ]
  return problems.length > 0 ? { ok: false, problems } : { ok: true, have, numbers }
}

function numberProblem(
  option: "have" | "want" | "grams",
  typed: string | undefined,
  values: readonly number[],
): ArgumentProblem[] {
  if (typed === undefined) return [{ code: "number-missing", option }]
  return values.every(Number.isFinite) ? [] : [{ code: "number-unusable", option, found: typed }]
}

/** An empty piece is no 0. */
const toNumber = (typed: string) => (typed.trim() ? Number(typed) : Number.NaN)
