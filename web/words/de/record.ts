import type { FoilKind } from "../../../geometry/section/section"
import type { Question } from "../../core/document/consultation"
import type { DoneCode } from "../../core/record/doneToday"
import type { DayTime } from "../../core/record/recordLines"
import type { RecordPerson } from "../../core/record/recordPeople"
import type { FoilPlace } from "../../core/schedule/placesOf"
import type { ClientWords } from "../en/client/client"
import type { record as english, RecordWords } from "../en/record"
import { say } from "../say"
import type { Tools } from "../tools"
import { ruleNames } from "./cautions/ruleNames"
import { pieces as counted } from "./common/pieces"

/** What is kept of a service: said to the client of what was done, and to the salon of all that was seen. */
export const record: typeof english = (t, common, client) => ({
  done: { "set-note": "Notizen fürs nächste Mal ändern" },
  told: told(t),
  labels: {
    measures: "Haar",
    "no-consultation": "Beratung",
    wanted: "Gewünscht",
    health: "Gesundheit",
    "patch-test": "Hauttest",
    "strand-test": "Probesträhne",
    override: "Übergangen",
    letter: "Ärztl. Schreiben",
    withdrawn: "Stopp zurück",
    people: "Von wem",
    "asked-by": "Gefragt von",
    "asked-aloud": "Laut gefragt",
  },
  lines: recordLines(t, client),
  foil: ({ kind, place, foils }) => {
    const what = foils === 1 ? common.kinds[kind] : `${common.kinds[kind]} in ${t.whole(foils)} Folien`
    return t.capital(`${what}, ${say(common.place, place)}`)
  },
  looks: looks(t),
  minutesOn: (minutes) => `${t.minutes(minutes)} im Haar`,
  placedBy: ({ who, initials }) => (initials === "" ? `gelegt: ${roles[who]}` : `gelegt von ${initials}`),
  mixedBy: (by) => personWords(by),
})

const places: Record<FoilPlace, string> = {
  hairline: "an Ihrer Haarlinie",
  top: "am Oberkopf",
  sides: "an den Seiten",
  back: "am Hinterkopf",
}

const told = (t: Tools): RecordWords["told"] => {
  const pieces: Record<FoilKind, (count: number) => string> = {
    slice: (count) => t.count(count, { one: "# feine Strähne", other: "# feine Strähnen" }),
    weave: (count) => t.count(count, { one: "# gewebte Strähne", other: "# gewebte Strähnen" }),
    backcomb: (count) =>
      t.count(count, { one: "# Strähne mit weichem Verlauf", other: "# Strähnen mit weichem Verlauf" }),
    painted: (count) =>
      t.count(count, { one: "# freihändig gemalte Strähne", other: "# freihändig gemalte Strähnen" }),
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
      lightened: ({ products }) => `Aufgehellt mit ${t.and(products)}.`,
      toned: ({ products }) => `Getönt mit ${t.and(products)}.`,
    },
    planned: {
      foils,
      lightened: ({ products }) => `Aufgehellt wird mit ${t.and(products)}.`,
      toned: ({ products }) => `Getönt wird mit ${t.and(products)}.`,
    },
  }
}

const scalps = {
  calm: "Kopfhaut ruhig",
  sensitive: "Kopfhaut empfindlich",
  irritated: "Kopfhaut gereizt",
  broken: "Kopfhaut verletzt",
}
const roles = { 1: "Fachkraft", 2: "Assistenz" }
/** Whose deed it was: initials, else what they are. */
const personWords = ({ who, initials }: Pick<RecordPerson, "who" | "initials">) =>
  `von ${initials || `der ${roles[who]}`}`
const finishes = { cool: "Endton kühl", neutral: "Endton neutral", warm: "Endton warm" }

const checked = (by: RecordPerson | null) => (by ? `kontrolliert ${personWords(by)}` : "kontrolliert")

const recordLines = (t: Tools, client: ClientWords): RecordWords["lines"] => {
  const when = (at: DayTime | null) => (at ? `${t.date(at.day)}, ${at.time}` : "Tag unbekannt")
  const asked = (question: Question) => `ja: ${client.questions[question]}`
  return {
    measures: ({ densityPerCm2, fibreUm, frontCm, sidesCm, backCm }) =>
      `${t.whole(densityPerCm2)} Haare pro cm², ${t.whole(fibreUm)} µm dick; Länge ${t.cm(frontCm, 1)} vorn, ${t.cm(sidesCm, 1)} Seiten, ${t.cm(backCm, 1)} hinten`,
    "no-consultation": "Nicht gefragt.",
    hair: client.hair.line,
    wanted: ({ liftToLevel, finish, upkeepWeeks, greyShare }) =>
      t.capital(
        [
          ...(liftToLevel === null ? [] : [`aufhellen bis Tonhöhe ${t.number(liftToLevel)}`]),
          ...(finish === null ? [] : [finishes[finish]]),
          ...(upkeepWeeks === null
            ? []
            : [t.count(upkeepWeeks, { one: "kommt jede Woche", other: "kommt alle # Wochen" })]),
          ...(greyShare === null ? [] : [`${t.percent(greyShare)} grau`]),
        ].join(", "),
      ),
    health: ({ scalp, ageYears, yes, no, open }) =>
      [
        scalp === null ? "Kopfhaut nicht gefragt" : scalps[scalp],
        ageYears === null
          ? "Alter nicht gefragt"
          : t.count(ageYears, { one: "Alter # Jahr", other: "Alter # Jahre" }),
        ...yes.map(asked),
        ...(no > 0 ? [t.count(no, { one: "# mit Nein beantwortet", other: "# mit Nein beantwortet" })] : []),
        ...(open > 0 ? [t.count(open, { one: "# nicht gefragt", other: "# nicht gefragt" })] : []),
      ].join("; "),
    "patch-test": ({ product, place, applied, result }) =>
      [
        `${product}: aufgetragen ${when(applied)}${place ? ` (${place})` : ""}`,
        result === null
          ? "nicht abgelesen"
          : `${outcomes[result.outcome]}, abgelesen ${when(result.read)}${result.readBy ? ` von ${result.readBy}` : ""}`,
      ].join("; "),
    "strand-test": ({ product, outcome }) => `${product}: ${strands[outcome]}`,
    override: ({ rule, mix, about, by, on, reason }) =>
      `${[stopName(rule), ...(mix ? [`Mischung ${mix}`] : []), ...(about ? [about] : [])].join(", ")}: übergangen von ${by}${on ? ` am ${t.date(on)}` : ""}: ${reason}`,
    letter: ({ rule, from, dated }) => `${stopName(rule)}: ${from}, ${t.date(dated)}`,
    withdrawn: ({ rule, about, at, by }) =>
      `${[stopName(rule), ...(about ? [about] : [])].join(", ")}: geändert oder entfernt ${when(at)}, ${by === "" ? "Name nicht angegeben" : `von ${by}`}`,
    people: ({ people }) =>
      t.capital(
        people
          .map(({ who, name, initials }) =>
            name === "" ? roles[who] : `${roles[who]} ${name} (${initials})`,
          )
          .join(", "),
      ),
    "asked-by": ({ by }) => by,
    "asked-aloud": ({ by, at, questions }) =>
      `${by}, ${when(at)}: ${t.count(questions, { one: "Nein auf # Frage", other: "Nein auf # Fragen" })}`,
  }
}

/** A stop that an earlier Partline knew may have no name any more. */
const stopName = (rule: string) =>
  Object.hasOwn(ruleNames, rule) ? ruleNames[rule as keyof typeof ruleNames] : rule.replaceAll("-", " ")

const outcomes = { clear: "ohne Reaktion", reacted: "REAKTION" }
const strands = { held: "bestanden", failed: "NICHT BESTANDEN" }

const looks = (t: Tools): RecordWords["looks"] => ({
  checked: ({ onMin, level, stretch, comfort, moist, by }) =>
    [
      level === null
        ? `${t.minutes(onMin)}: ${checked(by)}`
        : `${t.minutes(onMin)}: Tonhöhe ${t.number(level)}`,
      ...(stretch === "soft" ? ["schlaff"] : stretch === "stop" ? ["dehnt sich: Stopp"] : []),
      ...(comfort === "warm" ? ["Kopfhaut warm"] : comfort === "burning" ? ["Kopfhaut brennt"] : []),
      ...(moist === false ? ["trocken"] : []),
      ...(level !== null && by ? [checked(by)] : []),
    ].join(", "),
  "not-checked": ({ times }) =>
    t.count(times, { one: "nicht kontrolliert", other: "#-mal nicht kontrolliert" }),
  "roots-on": ({ afterMin, by }) =>
    `Ansatz ${t.minutes(afterMin)} nach den Spitzen${by ? `, ${personWords(by)}` : ""}`,
  "roots-never": "Ansatz nie aufgetragen",
  "re-coated": ({ times }) => t.count(times, { one: "nachgetragen", other: "#-mal nachgetragen" }),
})
