import { type Consultation, questionNames, questions } from "../document/consultation"
import type { Plan } from "../document/schema"
import { capital } from "../text/capital"
import { hairWords } from "../text/hairWords"
import { numberText } from "../text/numberText"
import { clockIn, dayIn, momentMs } from "../text/zonedTime"

/** A line of the salon's own record: what it is about, and what is written down. */
export type RecordLine = { label: string; text: string }

/** The hair, what was asked and wanted, and the tests with their results; what was not asked says so. */
export function clientLines(plan: Plan, zone: string): RecordLine[] {
  const { consultation } = plan
  const measures: RecordLine = { label: "Hair", text: measuresOf(plan) }
  if (!consultation) return [measures, { label: "Consultation", text: "not asked" }]
  return [
    measures,
    ...hairWords(consultation.hair).map((text) => ({ label: "", text })),
    ...wanted(consultation),
    { label: "Health", text: healthWords(consultation) },
    ...alertTests(consultation, zone),
    ...consultation.strandTests.map(({ product, outcome }) => ({
      label: "Strand test",
      text: `${product}: ${outcome}`,
    })),
    ...consultation.passes.map(({ rule, reason, by, mix, about }) => ({
      label: "Stop passed",
      text: `${[rule.replaceAll("-", " "), mix && `mix ${mix}`, about].filter(Boolean).join(", ")}, by ${by}: ${reason}`,
    })),
  ]
}

const measuresOf = ({ hair: { densityPerCm2, fibreUm, lengthCm } }: Plan) =>
  `${numberText(densityPerCm2, 0)} hairs a cm², fibre ${numberText(fibreUm, 0)} µm; ${numberText(lengthCm.front)} cm long in front, ${numberText(lengthCm.sides)} at the sides, ${numberText(lengthCm.back)} at the back`

function wanted({ liftToLevel, finish, upkeepWeeks, greyShare }: Consultation): RecordLine[] {
  const words = [
    ...(liftToLevel === null ? [] : [`lift to level ${numberText(liftToLevel)}`]),
    ...(finish === null ? [] : [`finish ${finish}`]),
    ...(upkeepWeeks === null ? [] : [`back every ${upkeepWeeks} weeks`]),
    ...(greyShare === null ? [] : [`${numberText(100 * greyShare, 0)} % grey`]),
  ]
  return words.length > 0 ? [{ label: "Wanted", text: words.join(", ") }] : []
}

/** Every yes in the words it was asked in; the rest counted. */
function healthWords({ scalp, ageYears, answers }: Consultation): string {
  const yes = questionNames.filter((name) => answers[name] === "yes")
  const no = questionNames.filter((name) => answers[name] === "no").length
  const open = questionNames.length - yes.length - no
  return [
    scalp === null ? "scalp not asked" : `scalp ${scalp}`,
    ...(ageYears === null ? [] : [`${ageYears} years`]),
    ...yes.map((name) => `yes: ${questions[name]}`),
    `${no} answered no`,
    ...(open > 0 ? [`${open} not asked`] : []),
  ]
    .map((words, i) => (i === 0 ? capital(words) : words))
    .join("; ")
}

const alertTests = ({ alertTests: tests }: Consultation, zone: string): RecordLine[] =>
  tests.map(({ product, place, appliedAt, result }) => ({
    label: "Alert test",
    text: `${product}${place ? `, ${place}` : ""}, on ${momentWords(appliedAt, zone)}; ${
      result
        ? `${result.outcome}, read ${momentWords(result.readAt, zone)}${result.readBy ? ` by ${result.readBy}` : ""}`
        : "not read"
    }`,
  }))

function momentWords(moment: string, zone: string): string {
  const ms = momentMs(moment)
  return ms === null ? "an unknown day" : `${dayIn(zone, ms)} ${clockIn(zone, ms).slice(11)}`
}
