import type { ToneZoneName } from "../../../core/document/serviceRecord"
import type { ChairWords } from "../../en/chair/chair"
import type { Tools } from "../../tools"

export const toners: Record<ToneZoneName, string> = {
  "root-melt": "Розтушовка кореня",
  mids: "Тонер, довжина",
  hairline: "Тонер, лінія росту",
}

/** What is due at the chair: as it is shown, second by second, and as it is spoken once. */
export const calls = (t: Tools): ChairWords["calls"] => {
  const who = (foils: readonly number[]) => foilsWords(t, foils)
  const bowlOf = ({ bowl, mix }: { bowl: number; mix: string }) => `Миска ${bowl}, суміш ${mix}`
  return {
    due: "Пора",
    toners,
    more: (count) => `і ще ${t.whole(count)}`,
    freshBowl: "торкніться, коли змішано свіжу миску",
    carryOn: (foils) => `Витримувати далі, ${who(foils).toLocaleLowerCase(t.locale)}`,
    off: (foil) => `Зняти ${foil}`,
    checkOne: "Перевірити одну",
    rinse: "Змито",

    shown: {
      "bowl-ahead": ({ inMs, ...bowl }) => `${bowlOf(bowl)}: використати протягом ${t.clock(inMs)}`,
      "bowl-past": ({ byMs, ...bowl }) =>
        `${bowlOf(bowl)}: придатність минула ${t.clock(byMs)} тому, змішати свіжу`,
      "heat-ahead": ({ inMs }) => `Тепло: вимкнути через ${t.clock(inMs)}`,
      "heat-past": ({ byMs }) => `Тепло: вимкнути зараз, перебір ${t.clock(byMs)}`,
      "take-off": ({ foils }) => `${who(foils)}: зняти зараз, перевірка показала «стоп»`,
      "at-goal": ({ foils }) => `${who(foils)}: зняти зараз, цільовий рівень`,
      "planned-ahead": ({ foils, inMs }) => `${who(foils)}: за планом зняти через ${t.clock(inMs)}`,
      "planned-off": ({ foils, byMs }) =>
        byMs < 60_000
          ? `${who(foils)}: за планом зняти зараз, перевірити`
          : `${who(foils)}: за планом зняти ${t.clock(byMs)} тому, перевірити`,
      "toner-ahead": ({ zone, inMs }) => `${toners[zone]}: змити через ${t.clock(inMs)}`,
      "toner-off": ({ zone, byMs }) => `${toners[zone]}: перевірити й змити, перебір ${t.clock(byMs)}`,
      "toner-limit-ahead": ({ zone, inMs }) => `${toners[zone]}: макс. час через ${t.clock(inMs)}`,
      "toner-limit": ({ zone, byMs }) => `${toners[zone]}: змити зараз, ${t.clock(byMs)} понад макс. час`,
      "limit-ahead": ({ foils, inMs }) => `${who(foils)}: макс. час через ${t.clock(inMs)}`,
      "limit-past": ({ foils, byMs }) =>
        foils.length === 1
          ? `${who(foils)}: зняти зараз, ${t.clock(byMs)} понад макс. час`
          : `${who(foils)}: зняти зараз, до ${t.clock(byMs)} понад макс. час`,
      "check-ahead": ({ foils, inMs }) => `${who(foils)}: перевірка через ${t.clock(inMs)}`,
      "check-now": ({ foils }) => `${who(foils)}: перевірити зараз`,
      "check-late": ({ foils, byMs }) => `${who(foils)}: перевірити зараз, запізнення ${t.clock(byMs)}`,
    },

    spoken: {
      "bowl-ahead": (bowl) => `${bowlOf(bowl)}: скоро використати.`,
      "bowl-past": (bowl) => `${bowlOf(bowl)}: придатність минула, змішати свіжу.`,
      "heat-ahead": "Скоро вимкнути тепло.",
      "heat-past": "Вимкнути тепло зараз, потім перевірити.",
      "take-off": ({ foils }) => `${who(foils)}: зняти зараз.`,
      "at-goal": ({ foils }) => `${who(foils)}: зняти зараз.`,
      "planned-ahead": ({ foils }) => `${who(foils)}: за планом скоро зняти.`,
      "planned-off": ({ foils }) => `${who(foils)}: за планом зняти зараз.`,
      "toner-ahead": ({ zone }) => `${toners[zone]}: скоро змити.`,
      "toner-off": ({ zone }) => `${toners[zone]}: перевірити й змити.`,
      "toner-limit-ahead": ({ zone }) => `${toners[zone]}: скоро максимальний час.`,
      "toner-limit": ({ zone }) => `${toners[zone]}: змити зараз.`,
      "limit-ahead": ({ foils }) => `${who(foils)}: скоро максимальний час.`,
      "limit-past": ({ foils }) => `${who(foils)}: зняти зараз, понад максимальний час.`,
      "check-ahead": ({ foils }) => `${who(foils)}: скоро перевірка.`,
      "check-now": ({ foils }) => `${who(foils)}: перевірити зараз.`,
      "check-late": ({ foils }) => `${who(foils)}: перевірити зараз.`,
    },
  }
}

/** Foils by their numbers, three and more that follow each other as a span: "Фольги 1–5, 8". */
export const foilsWords = (t: Tools, foils: readonly number[]) =>
  `${foils.length === 1 ? "Фольга" : "Фольги"} ${t.runs(foils, (from, to) => `${from}–${to}`)}`
