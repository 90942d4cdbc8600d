import type { FoilKind } from "../../../geometry/section/section"
import type { Question } from "../../core/document/consultation"
import type { DoneCode } from "../../core/record/doneToday"
import type { LookCode, RecordFoil } from "../../core/record/recordFoils"
import type { DayTime, RecordLine } from "../../core/record/recordLines"
import type { RecordPerson } from "../../core/record/recordPeople"
import type { FoilPlace } from "../../core/schedule/placesOf"
import { type Sentences, say } from "../say"
import type { Tools } from "../tools"
import { ruleNames } from "./cautions/ruleNames"
import type { ClientWords } from "./client/client"
import type { CommonWords } from "./common/common"
import { pieces as counted } from "./common/pieces"

/** What is kept of a service: said to the client of what was done, and to the salon of all that was seen. */
export const record = (t: Tools, common: CommonWords, client: ClientWords) => ({
  done: {
    "set-note": "Change the notes for next time",
  },

  /** To the client, of the hair. */
  told: told(t),

  /** What a line of the salon's record is about; lines of hair go on from its measures. */
  labels: {
    measures: "Hair",
    "no-consultation": "Consultation",
    wanted: "Wanted",
    health: "Health",
    "patch-test": "Patch test",
    "strand-test": "Strand test",
    override: "Override",
    letter: "Doctor’s letter",
    withdrawn: "Stop taken back",
    people: "By whom",
    "asked-by": "Asked by",
    "asked-aloud": "Asked aloud",
  } satisfies Record<Exclude<RecordLine["code"], "hair">, string>,
  lines: recordLines(t, client),

  foil: ({ kind, place, foils }: Pick<RecordFoil, "kind" | "place" | "foils">) => {
    const what = foils === 1 ? common.kinds[kind] : `${common.kinds[kind]} in ${t.whole(foils)} foils`
    return t.capital(`${what}, ${say(common.place, place)}`)
  },
  looks: looks(t),
  /** How long a foil was on. */
  minutesOn: (minutes: number) => `${t.minutes(minutes)} on`,
  /** Who placed a foil: initials, else what they are. */
  placedBy: ({ who, initials }: Pick<RecordPerson, "who" | "initials">) =>
    initials === "" ? `placed by the ${t.spelled(roles)[who]}` : `placed by ${initials}`,
  /** Who mixed a bowl, after what was mixed. */
  mixedBy: person(t),
})

const places: Record<FoilPlace, string> = {
  hairline: "along your hairline",
  top: "on top",
  sides: "at the sides",
  back: "at the back",
}

const told = (t: Tools) => {
  const pieces: Record<FoilKind, (count: number) => string> = {
    slice: (count) => t.count(count, { one: "# fine slice", other: "# fine slices" }),
    weave: (count) => t.count(count, { one: "# woven piece", other: "# woven pieces" }),
    backcomb: (count) => t.count(count, { one: "# soft, blended piece", other: "# soft, blended pieces" }),
    painted: (count) => t.count(count, { one: "# painted panel", other: "# painted panels" }),
  }
  const foils = ({ count, piece, places: where, kinds }: Extract<DoneCode, { code: "foils" }>) => {
    const [all, place] = [
      kinds.map((each) => pieces[each.kind](each.count)),
      where.map((each) => places[each]),
    ]
    return `${counted(t).count(count, piece)} ${t.and(place)}: ${t.and(all)}.`
  }
  return {
    done: {
      foils,
      lightened: ({ products }) => `Lightened with ${t.and(products)}.`,
      toned: ({ products }) => `Toned with ${t.and(products)}.`,
    } satisfies Sentences<DoneCode>,
    planned: {
      foils,
      lightened: ({ products }) => `To be lightened with ${t.and(products)}.`,
      toned: ({ products }) => `To be toned with ${t.and(products)}.`,
    } satisfies Sentences<DoneCode>,
  }
}

const scalps = {
  calm: "Scalp calm",
  sensitive: "Scalp sensitive",
  irritated: "Scalp irritated",
  broken: "Scalp broken",
} satisfies Record<NonNullable<Extract<RecordLine, { code: "health" }>["scalp"]>, string>
const roles = { 1: "colourist", 2: "assistant" }
const finishes = { cool: "finish cool", neutral: "finish neutral", warm: "finish warm" }

const recordLines = (t: Tools, client: ClientWords) => {
  const when = (at: DayTime | null) => (at ? `${t.date(at.day)}, ${at.time}` : "day unknown")
  const asked = (question: Question) => `yes: ${client.questions[question]}`
  return {
    measures: ({ densityPerCm2, fibreUm, frontCm, sidesCm, backCm }) =>
      `${t.whole(densityPerCm2)} hairs per cm², ${t.whole(fibreUm)} µm thick; length ${t.told.cm(frontCm, 1)} front, ${t.told.cm(sidesCm, 1)} sides, ${t.told.cm(backCm, 1)} back`,
    "no-consultation": "Not asked.",
    hair: client.hair.line,
    wanted: ({ liftToLevel, finish, upkeepWeeks, greyShare }) =>
      t.capital(
        [
          ...(liftToLevel === null ? [] : [`lift to level ${t.number(liftToLevel)}`]),
          ...(finish === null ? [] : [finishes[finish]]),
          ...(upkeepWeeks === null
            ? []
            : [t.count(upkeepWeeks, { one: "back every week", other: "back every # weeks" })]),
          ...(greyShare === null ? [] : [`${t.percent(greyShare)} ${t.spelled("grey")}`]),
        ].join(", "),
      ),
    health: ({ scalp, ageYears, yes, no, open }) =>
      [
        scalp === null ? "Scalp not asked" : scalps[scalp],
        ageYears === null ? "age not asked" : t.count(ageYears, { one: "age # year", other: "age # years" }),
        ...yes.map(asked),
        ...(no > 0 ? [t.count(no, { one: "# answered no", other: "# answered no" })] : []),
        ...(open > 0 ? [t.count(open, { one: "# not asked", other: "# not asked" })] : []),
      ].join("; "),
    "patch-test": ({ product, place, applied, result }) =>
      [
        `${product}: applied ${when(applied)}${place ? ` (${place})` : ""}`,
        result === null
          ? "not read"
          : `${outcomes[result.outcome]}, read ${when(result.read)}${result.readBy ? ` by ${result.readBy}` : ""}`,
      ].join("; "),
    "strand-test": ({ product, outcome }) => `${product}: ${strands[outcome]}`,
    override: ({ rule, mix, about, by, on, reason }) =>
      `${[stopName(t, rule), ...(mix ? [`mix ${mix}`] : []), ...(about ? [about] : [])].join(", ")}: overridden by ${by}${on ? ` on ${t.date(on)}` : ""}: ${reason}`,
    letter: ({ rule, from, dated }) => `${stopName(t, rule)}: ${from}, ${t.date(dated)}`,
    withdrawn: ({ rule, about, at, by }) =>
      `${[stopName(t, rule), ...(about ? [about] : [])].join(", ")}: changed or removed ${when(at)}, ${by === "" ? "name not given" : `by ${by}`}`,
    people: ({ people }) =>
      t.capital(
        people
          .map(({ who, name, initials }) =>
            name === "" ? t.spelled(roles)[who] : `${t.spelled(roles)[who]} ${name} (${initials})`,
          )
          .join(", "),
      ),
    "asked-by": ({ by }) => by,
    "asked-aloud": ({ by, at, questions }) =>
      `${by}, ${when(at)}: ${t.count(questions, { one: "no to # question", other: "no to # questions" })}`,
  } satisfies Sentences<RecordLine>
}

/** A stop that an earlier Partline knew may have no name any more. */
const stopName = (t: Tools, rule: string) =>
  Object.hasOwn(ruleNames, rule)
    ? t.spelled(ruleNames)[rule as keyof typeof ruleNames]
    : rule.replaceAll("-", " ")

const outcomes = { clear: "clear", reacted: "REACTED" }
const strands = { held: "passed", failed: "FAILED" }

/** Whose deed it was: initials, else what they are. */
const person =
  (t: Tools) =>
  ({ who, initials }: Pick<RecordPerson, "who" | "initials">) =>
    `by ${initials || `the ${t.spelled(roles)[who]}`}`

const looks = (t: Tools) => {
  const checked = (by: RecordPerson | null) => (by ? `checked ${person(t)(by)}` : "checked")
  return {
    checked: ({ onMin, level, stretch, comfort, moist, by }) =>
      [
        level === null
          ? `${t.minutes(onMin)}: ${checked(by)}`
          : `${t.minutes(onMin)}: level ${t.number(level)}`,
        ...(stretch === "soft" ? ["limp"] : stretch === "stop" ? ["stretches: stop"] : []),
        ...(comfort === "warm" ? ["scalp warm"] : comfort === "burning" ? ["scalp burning"] : []),
        ...(moist === false ? ["dry"] : []),
        ...(level !== null && by ? [checked(by)] : []),
      ].join(", "),
    "not-checked": ({ times }) => t.count(times, { one: "not checked", other: "not checked, # times" }),
    "roots-on": ({ afterMin, by }) =>
      `roots on ${t.minutes(afterMin)} after the ends${by ? `, ${person(t)(by)}` : ""}`,
    "roots-never": "roots never went on",
    "re-coated": ({ times }) => t.count(times, { one: "re-coated", other: "re-coated # times" }),
  } satisfies Sentences<LookCode>
}

export type RecordWords = ReturnType<typeof record>
