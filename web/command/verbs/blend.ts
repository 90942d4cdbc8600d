import { legalLimitPercent } from "../../../presets/formula/developers"
import { blend as blendBottles } from "../../core/mixing/blend"
import { isOverLegalLimit } from "../../core/mixing/strength"
import { done, refuse, type Verb } from "../input/verb"

export const blend: Verb = {
  usage: "--have PERCENTS --want PERCENT --grams GRAMS",
  summary: "Grams of each bottle that together are the strength wanted, by mass.",
  takesFile: false,
  options: {
    have: "per cents of the bottles, a comma between: 12,3",
    want: "per cent wanted: 6",
    grams: "grams wanted in all: 90",
  },
  run({ options }) {
    const read = readOptions(options)
    if (!read.ok) return refuse(...read.problems)
    const [want, grams] = read.numbers
    const result = blendBottles(read.have, want, grams)
    if ("problems" in result) return refuse(...result.problems.map((problem) => `--${problem}`))
    const notes = isOverLegalLimit(want) ? [overLimit] : []
    return { ...done({ parts: result.parts }), problems: notes }
  },
}

const overLimit = `Note: the law allows at most ${legalLimitPercent} % in a hair product that is ready for use.`

type Read = { ok: true; have: number[]; numbers: number[] } | { ok: false; problems: string[] }

function readOptions(options: Readonly<Record<string, string>>): Read {
  const have = options.have?.split(",").map(toNumber) ?? []
  const numbers = [options.want, options.grams].map((typed) => toNumber(typed ?? ""))
  const problems = [
    ...numberProblem("have", "per cents with a comma between, 12,3", options.have, have),
    ...numberProblem("want", "a per cent, 6 or 7.5", options.want, [numbers[0]]),
    ...numberProblem("grams", "grams, 90 or 37.5", options.grams, [numbers[1]]),
  ]
  return problems.length > 0 ? { ok: false, problems } : { ok: true, have, numbers }
}

function numberProblem(name: string, expected: string, typed: string | undefined, values: readonly number[]) {
  if (typed === undefined) return [`--${name} is missing: expected ${expected}.`]
  return values.every(Number.isFinite) ? [] : [`--${name}: expected ${expected}, found "${typed}".`]
}

/** An empty piece is no 0. */
const toNumber = (typed: string) => (typed.trim() ? Number(typed) : Number.NaN)
