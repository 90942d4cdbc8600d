import type { FoilKind } from "../../../geometry/section/section"
import type { Question } from "../../core/document/consultation"
import type { DoneCode } from "../../core/record/doneToday"
import type { DayTime } from "../../core/record/recordLines"
import type { RecordPerson } from "../../core/record/recordPeople"
import type { FoilPlace } from "../../core/schedule/placesOf"
import type { ClientWords } from "../en/client/client"
import type { CommonWords } from "../en/common/common"
import type { RecordWords } from "../en/record"
import { say } from "../say"
import type { Tools } from "../tools"
import { ruleNames } from "./cautions/ruleNames"
import { pieces as counted } from "./common/pieces"
import { foilCount } from "./placement/counted"

/** What is kept of a service: said to the client of what was done, and to the salon of all that was seen. */
export const record = (t: Tools, common: CommonWords, client: ClientWords): RecordWords => ({
  done: {
    "set-note": "Зміна нотаток на наступний раз",
  },

  told: told(t),

  labels: {
    measures: "Волосся",
    "no-consultation": "Консультація",
    wanted: "Побажання",
    health: "Здоров’я",
    "patch-test": "Шкірний тест",
    "strand-test": "Тест на пасмі",
    override: "Обхід заборони",
    letter: "Лист лікаря",
    withdrawn: "Відкликана заборона",
    people: "Хто",
    "asked-by": "Хто питав",
    "asked-aloud": "Запитано вголос",
  },
  lines: recordLines(t, client),

  foil: ({ kind, place, foils }) => {
    const what = foils === 1 ? common.kinds[kind] : `${common.kinds[kind]} (${foilCount(t, foils)})`
    return t.capital(`${what}, ${say(common.place, place)}`)
  },
  looks: {
    checked: ({ onMin, level, stretch, comfort, moist, by }) =>
      [
        level === null
          ? `${t.minutes(onMin)}: ${checked(by)}`
          : `${t.minutes(onMin)}: рівень ${t.number(level)}`,
        ...(stretch === "soft" ? ["мляве"] : stretch === "stop" ? ["розтягується: стоп"] : []),
        ...(comfort === "warm" ? ["шкірі тепло"] : comfort === "burning" ? ["шкіру пече"] : []),
        ...(moist === false ? ["сухо"] : []),
        ...(level !== null && by ? [checked(by)] : []),
      ].join(", "),
    "not-checked": ({ times }) =>
      times === 1
        ? "не перевірено"
        : t.count(times, {
            one: "не перевірено # раз",
            few: "не перевірено # рази",
            many: "не перевірено # разів",
            other: "не перевірено # раза",
          }),
    "roots-on": ({ afterMin, by }) =>
      `корінь через ${t.minutes(afterMin)} після кінців${by ? `, ${personWords(by)}` : ""}`,
    "roots-never": "на корінь не наносили",
    "re-coated": ({ times }) =>
      times === 1
        ? "оновлено"
        : t.count(times, {
            one: "оновлено # раз",
            few: "оновлено # рази",
            many: "оновлено # разів",
            other: "оновлено # раза",
          }),
  },
  minutesOn: (minutes) => `витримка ${t.minutes(minutes)}`,
  placedBy: ({ who, initials }) => `накладено: ${initials === "" ? roles[who] : initials}`,
  mixedBy: (by) => personWords(by),
})

const places: Record<FoilPlace, string> = {
  hairline: "уздовж лінії росту",
  top: "зверху",
  sides: "з боків",
  back: "ззаду",
}

const told = (t: Tools): RecordWords["told"] => {
  const pieces: Record<FoilKind, (count: number) => string> = {
    slice: (count) =>
      t.count(count, {
        one: "# тонкий слайс",
        few: "# тонкі слайси",
        many: "# тонких слайсів",
        other: "# тонкого слайса",
      }),
    weave: (count) =>
      t.count(count, {
        one: "# пасмо штопкою",
        few: "# пасма штопкою",
        many: "# пасом штопкою",
        other: "# пасма штопкою",
      }),
    backcomb: (count) =>
      t.count(count, {
        one: "# м’яке розмите пасмо",
        few: "# м’які розмиті пасма",
        many: "# м’яких розмитих пасом",
        other: "# м’якого розмитого пасма",
      }),
    painted: (count) =>
      t.count(count, {
        one: "# пасмо, мальоване від руки",
        few: "# пасма, мальовані від руки",
        many: "# пасом, мальованих від руки",
        other: "# пасма, мальованого від руки",
      }),
  }
  const foils = ({ count, piece, places: where, kinds }: Extract<DoneCode, { code: "foils" }>) => {
    const all = t.and(kinds.map((each) => pieces[each.kind](each.count)))
    const place = t.and(where.map((each) => places[each]))
    return `${counted(t).count(count, piece)} ${place}: ${all}.`
  }
  return {
    done: {
      foils,
      lightened: ({ products }) => `Освітлено засобом: ${t.and(products)}.`,
      toned: ({ products }) => `Тоновано засобом: ${t.and(products)}.`,
    },
    planned: {
      foils,
      lightened: ({ products }) => `Освітлення засобом: ${t.and(products)}.`,
      toned: ({ products }) => `Тонування засобом: ${t.and(products)}.`,
    },
  }
}

const scalps = {
  calm: "Шкіра голови спокійна",
  sensitive: "Шкіра голови чутлива",
  irritated: "Шкіра голови подразнена",
  broken: "Шкіра голови ушкоджена",
}
const roles = { 1: "колорист", 2: "асистент" }

/** Whose deed it was: initials, else what they are. */
const personWords = ({ who, initials }: Pick<RecordPerson, "who" | "initials">) =>
  `(${initials || roles[who]})`
const finishes = {
  cool: "кінцевий тон холодний",
  neutral: "кінцевий тон нейтральний",
  warm: "кінцевий тон теплий",
}

const checked = (by: RecordPerson | null) => (by ? `перевірено ${personWords(by)}` : "перевірено")

const recordLines = (t: Tools, client: ClientWords): RecordWords["lines"] => {
  const when = (at: DayTime | null) => (at ? `${t.date(at.day)}, ${at.time}` : "день невідомий")
  const asked = (question: Question) => `так: ${client.questions[question]}`
  return {
    measures: ({ densityPerCm2, fibreUm, frontCm, sidesCm, backCm }) =>
      `${t.whole(densityPerCm2)} волосин на см², завтовшки ${t.whole(fibreUm)} мкм; довжина: ${t.cm(frontCm, 1)} спереду, ${t.cm(sidesCm, 1)} з боків, ${t.cm(backCm, 1)} ззаду`,
    "no-consultation": "Не запитано.",
    hair: client.hair.line,
    wanted: ({ liftToLevel, finish, upkeepWeeks, greyShare }) =>
      t.capital(
        [
          ...(liftToLevel === null ? [] : [`освітлити до рівня ${t.number(liftToLevel)}`]),
          ...(finish === null ? [] : [finishes[finish]]),
          ...(upkeepWeeks === null
            ? []
            : upkeepWeeks === 1
              ? ["візит щотижня"]
              : [
                  t.count(upkeepWeeks, {
                    one: "візит раз на # тиждень",
                    few: "візит раз на # тижні",
                    many: "візит раз на # тижнів",
                    other: "візит раз на # тижня",
                  }),
                ]),
          ...(greyShare === null ? [] : [`сивина ${t.percent(greyShare)}`]),
        ].join(", "),
      ),
    health: ({ scalp, ageYears, yes, no, open }) =>
      [
        scalp === null ? "Про шкіру голови не запитано" : scalps[scalp],
        ageYears === null
          ? "вік не запитано"
          : t.count(ageYears, {
              one: "вік # рік",
              few: "вік # роки",
              many: "вік # років",
              other: "вік # року",
            }),
        ...yes.map(asked),
        ...(no > 0 ? [`відповідей «ні»: ${t.whole(no)}`] : []),
        ...(open > 0 ? [`не запитано: ${t.whole(open)}`] : []),
      ].join("; "),
    "patch-test": ({ product, place, applied, result }) =>
      [
        `${product}: нанесено ${when(applied)}${place ? ` (${place})` : ""}`,
        result === null
          ? "не оцінено"
          : `${outcomes[result.outcome]}, оцінено ${when(result.read)}${result.readBy ? `, ${result.readBy}` : ""}`,
      ].join("; "),
    "strand-test": ({ product, outcome }) => `${product}: ${strands[outcome]}`,
    override: ({ rule, mix, about, by, on, reason }) =>
      `${[stopName(rule), ...(mix ? [`суміш ${mix}`] : []), ...(about ? [about] : [])].join(", ")}: заборону обійдено (${by}${on ? `, ${t.date(on)}` : ""}): ${reason}`,
    letter: ({ rule, from, dated }) => `${stopName(rule)}: ${from}, ${t.date(dated)}`,
    withdrawn: ({ rule, about, at, by }) =>
      `${[stopName(rule), ...(about ? [about] : [])].join(", ")}: змінено або прибрано ${when(at)}, ${by === "" ? "ім’я не вказано" : by}`,
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
      `${by}, ${when(at)}: ${t.count(questions, {
        one: "«ні» на # питання",
        few: "«ні» на # питання",
        many: "«ні» на # питань",
        other: "«ні» на # питання",
      })}`,
  }
}

/** A stop that an earlier Partline knew may have no name any more. */
const stopName = (rule: string) =>
  Object.hasOwn(ruleNames, rule) ? ruleNames[rule as keyof typeof ruleNames] : rule.replaceAll("-", " ")

const outcomes = { clear: "без реакції", reacted: "РЕАКЦІЯ" }
const strands = { held: "пройдено", failed: "НЕ ПРОЙДЕНО" }
