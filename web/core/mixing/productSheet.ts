import { legalLimitPercent } from "../../../presets/formula/developers"
import type { AdditiveSheet, DeveloperLift, ProductSheet } from "../../../presets/formula/productSheet"
import { mostDeveloperParts, mostMinutes } from "../../../presets/formula/sheetLimits"
import { levelScale } from "../../../presets/timing/lift"
import { numberText } from "../text/numberText"
import { labelVolume } from "./strength"

/** What is wrong with a field of a sheet, and what to type instead. */
export type SheetProblem = { path: string; expected: string }

/** Everything that keeps a sheet from being used; a field left empty (null) never does. */
export const sheetProblems = (sheet: ProductSheet): SheetProblem[] => [
  ...nameProblems(sheet),
  ...ratioProblems(sheet),
  ...(sheet.kind === "direct-toner" ? [] : developerProblems(sheet.developers)),
  ...minuteProblems(sheet),
  ...sheet.additives.flatMap(additiveProblems),
  ...priceProblems(sheet),
]

const nameProblems = ({ name }: ProductSheet) =>
  name.trim() ? [] : [problem("name", "the product has no name; write what is on the tub")]

function ratioProblems({ ratio: { low, high } }: ProductSheet): SheetProblem[] {
  if (low === 0 && high === 0)
    return [
      problem(
        "ratio",
        "no mixing ratio is written; give parts of developer to 1 of product, for example 1.5 to 2.5",
      ),
    ]
  const said = `1 : ${numberText(low)} to 1 : ${numberText(high)}`
  if (!isBetween(low, 0.01, mostDeveloperParts) || !isBetween(high, 0.01, mostDeveloperParts))
    return [
      problem(
        "ratio",
        `${said} is no mixing ratio; give parts of developer to 1 of product, for example 1.5 to 2.5`,
      ),
    ]
  if (low > high)
    return [
      problem(
        "ratio",
        `${said} runs backwards; write the thicker mix first: ${numberText(high)} to ${numberText(low)}`,
      ),
    ]
  if (high < 1)
    return [
      problem(
        "ratio",
        `${said} holds more product than developer, as if turned upside down; if the tub says 1 : ${numberText(1 / high)}, write ${numberText(1 / high)}`,
      ),
    ]
  return []
}

function developerProblems(developers: readonly DeveloperLift[]): SheetProblem[] {
  if (developers.length === 0)
    return [
      problem(
        "developers",
        "no developer is listed; add each strength the sheet allows, for example 10, 20 and 30 vol",
      ),
    ]
  const volumes = developers.map(({ volume }) => volume)
  const twice = volumes.filter((volume, i) => volumes.indexOf(volume) < i)
  return [
    ...twice.map((volume) =>
      problem("developers", `${numberText(volume)} vol is listed twice; keep one line of it`),
    ),
    ...developers.flatMap(liftProblems),
    ...fallingLift(developers),
  ]
}

function liftProblems({ volume, levels }: DeveloperLift): SheetProblem[] {
  const path = "developers"
  const most = labelVolume(legalLimitPercent)
  if (!isBetween(volume, 1, most))
    return [
      problem(path, `${numberText(volume)} vol is no developer; give a volume from 1 to ${numberText(most)}`),
    ]
  if (!levels) return []
  const { low, high } = levels
  const span = levelScale.lightest - levelScale.darkest
  return isBetween(low, 0, span) && isBetween(high, low, span)
    ? []
    : [
        problem(
          path,
          `${numberText(low)} to ${numberText(high)} levels for ${numberText(volume)} vol is no lift; give the lower figure first, from 0 to ${span}, or leave both empty`,
        ),
      ]
}

/** A stronger developer that lifts less is a slip of the pen. */
function fallingLift(developers: readonly DeveloperLift[]): SheetProblem[] {
  const stated = developers
    .flatMap(({ volume, levels }) => (levels ? [{ volume, high: levels.high }] : []))
    .sort((a, b) => a.volume - b.volume)
  return stated
    .slice(1)
    .flatMap(({ volume, high }, i) =>
      high < stated[i].high
        ? [
            problem(
              "developers",
              `${numberText(volume)} vol lifts less than ${numberText(stated[i].volume)} vol; check both lines against the tub`,
            ),
          ]
        : [],
    )
}

const minuteNames = { longestMin: "longest time", heatMin: "heat", potLifeMin: "pot life" } as const

function minuteProblems(sheet: ProductSheet): SheetProblem[] {
  const fields = ["longestMin", "heatMin", "potLifeMin"] as const
  const outside = fields.flatMap((field) => {
    const minutes = sheet[field]
    const least = field === "heatMin" ? 0 : 1
    return minutes === null || isBetween(minutes, least, mostMinutes)
      ? []
      : [
          problem(
            field,
            `${numberText(minutes)} minutes cannot be; give ${least} to ${mostMinutes}, or leave it empty when the sheet does not say`,
          ),
        ]
  })
  return outside.length > 0 ? outside : heatProblems(sheet)
}

const heatProblems = ({ heatMin, longestMin }: ProductSheet) =>
  heatMin !== null && longestMin !== null && heatMin > longestMin
    ? [problem("heatMin", "it runs longer than the longest time; check both against the tub")]
    : []

const additiveProblems = ({ name, gPerG }: AdditiveSheet) => [
  ...(name.trim()
    ? []
    : [problem("additives", "one has no name; write what is on the bottle, or take it out")]),
  ...(isBetween(gPerG, 0, 1)
    ? []
    : [
        problem(
          "additives",
          `${numberText(gPerG)} g of ${name || "an additive"} to 1 g of product; give grams from 0 to 1`,
        ),
      ]),
]

const priceProblems = ({ price }: ProductSheet) =>
  price === null || (price.amount >= 0 && Number.isFinite(price.amount) && isBetween(price.forG, 1, 100_000))
    ? []
    : [problem("price", "the price needs an amount of 0 or more and the grams it buys; or leave it empty")]

const problem = (path: string, sentence: string): SheetProblem => ({
  path,
  expected: `${isMinutes(path) ? minuteNames[path] : path}: ${sentence}.`,
})
const isMinutes = (path: string): path is keyof typeof minuteNames => path in minuteNames
const isBetween = (value: number, low: number, high: number) => value >= low && value <= high
