import type { ToneZoneName } from "../../../core/document/serviceRecord"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { ChairWords } from "../../en/chair/chair"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"

export const toners: Record<ToneZoneName, string> = {
  "root-melt": "Розтушовка кореня",
  mids: "Тонер, довжина",
  hairline: "Тонер, лінія росту",
}

/** What is due at the chair: as it is shown, second by second, and as it is spoken once. */
export const calls = (t: Tools): ChairWords["calls"] => {
  const who = (foils: readonly number[], piece?: Piece) => foilsWords(t, foils, piece)
  const bowlOf = ({ bowl, mix }: { bowl: number; mix: string }) => `Миска ${bowl}, суміш ${mix}`
  return {
    due: "Пора",
    toners,
    more: (count) => `і ще ${t.whole(count)}`,
    freshBowl: "торкніться, коли змішано свіжу миску",
    carryOn: (foils, piece) => `Витримувати далі, ${who(foils, piece).toLocaleLowerCase(t.locale)}`,
    off: (foil) => `Зняти ${foil}`,
    rootsOn: (foil: number) => `Корінь ${t.whole(foil)} нанесено`,
    checkOne: "Перевірити одну",
    rinse: "Змито",

    shown: {
      "bowl-ahead": ({ inMs, ...bowl }) => `${bowlOf(bowl)}: використати протягом ${t.clock(inMs)}`,
      "bowl-past": ({ byMs, ...bowl }) =>
        `${bowlOf(bowl)}: придатність минула ${t.clock(byMs)} тому, змішати свіжу`,
      "heat-ahead": ({ inMs }) => `Тепло: вимкнути через ${t.clock(inMs)}`,
      "heat-past": ({ byMs }) => `Тепло: вимкнути зараз, перебір ${t.clock(byMs)}`,
      "take-off": ({ foils, piece }) => `${who(foils, piece)}: зняти зараз, перевірка показала «стоп»`,
      "at-goal": ({ foils, piece }) => `${who(foils, piece)}: зняти зараз, цільовий рівень`,
      "planned-ahead": ({ foils, piece, inMs }) =>
        `${who(foils, piece)}: за планом зняти через ${t.clock(inMs)}`,
      "planned-off": ({ foils, piece, byMs }) =>
        byMs < 60_000
          ? `${who(foils, piece)}: за планом зняти зараз, перевірити`
          : `${who(foils, piece)}: за планом зняти ${t.clock(byMs)} тому, перевірити`,
      "toner-ahead": ({ zone, inMs }) => `${toners[zone]}: змити через ${t.clock(inMs)}`,
      "toner-off": ({ zone, byMs }) => `${toners[zone]}: перевірити й змити, перебір ${t.clock(byMs)}`,
      "toner-limit-ahead": ({ zone, inMs }) => `${toners[zone]}: макс. час через ${t.clock(inMs)}`,
      "toner-limit": ({ zone, byMs }) => `${toners[zone]}: змити зараз, ${t.clock(byMs)} понад макс. час`,
      "limit-ahead": ({ foils, piece, inMs }) => `${who(foils, piece)}: макс. час через ${t.clock(inMs)}`,
      "limit-past": ({ foils, piece, byMs }) =>
        foils.length === 1
          ? `${who(foils, piece)}: зняти зараз, ${t.clock(byMs)} понад макс. час`
          : `${who(foils, piece)}: зняти зараз, до ${t.clock(byMs)} понад макс. час`,
      "roots-ahead": ({ foils, piece, mix, inMs }) =>
        `${who(foils, piece)}: корінь через ${t.clock(inMs)}, суміш ${mix}`,
      "roots-now": ({ foils, piece, mix, byMs }) =>
        byMs < 60_000
          ? `${who(foils, piece)}: нанести на корінь, суміш ${mix}`
          : `${who(foils, piece)}: нанести на корінь, суміш ${mix}, запізнення ${t.clock(byMs)}`,
      "check-ahead": ({ foils, piece, inMs }) => `${who(foils, piece)}: перевірка через ${t.clock(inMs)}`,
      "check-now": ({ foils, piece }) => `${who(foils, piece)}: перевірити зараз`,
      "check-late": ({ foils, piece, byMs }) =>
        `${who(foils, piece)}: перевірити зараз, запізнення ${t.clock(byMs)}`,
    },

    spoken: {
      "bowl-ahead": (bowl) => `${bowlOf(bowl)}: скоро використати.`,
      "bowl-past": (bowl) => `${bowlOf(bowl)}: придатність минула, змішати свіжу.`,
      "heat-ahead": "Скоро вимкнути тепло.",
      "heat-past": "Вимкнути тепло зараз, потім перевірити.",
      "take-off": ({ foils, piece }) => `${who(foils, piece)}: зняти зараз.`,
      "at-goal": ({ foils, piece }) => `${who(foils, piece)}: зняти зараз.`,
      "planned-ahead": ({ foils, piece }) => `${who(foils, piece)}: за планом скоро зняти.`,
      "planned-off": ({ foils, piece }) => `${who(foils, piece)}: за планом зняти зараз.`,
      "toner-ahead": ({ zone }) => `${toners[zone]}: скоро змити.`,
      "toner-off": ({ zone }) => `${toners[zone]}: перевірити й змити.`,
      "toner-limit-ahead": ({ zone }) => `${toners[zone]}: скоро максимальний час.`,
      "toner-limit": ({ zone }) => `${toners[zone]}: змити зараз.`,
      "limit-ahead": ({ foils, piece }) => `${who(foils, piece)}: скоро максимальний час.`,
      "limit-past": ({ foils, piece }) => `${who(foils, piece)}: зняти зараз, понад максимальний час.`,
      "roots-ahead": ({ foils, piece, mix }) => `${who(foils, piece)}: скоро корінь, суміш ${mix}.`,
      "roots-now": ({ foils, piece, mix }) => `${who(foils, piece)}: нанести на корінь, суміш ${mix}.`,
      "check-ahead": ({ foils, piece }) => `${who(foils, piece)}: скоро перевірка.`,
      "check-now": ({ foils, piece }) => `${who(foils, piece)}: перевірити зараз.`,
      "check-late": ({ foils, piece }) => `${who(foils, piece)}: перевірити зараз.`,
    },
  }
}

/** Foils by their numbers, three and more that follow each other as a span: "Фольги 1–5, 8". */
export const foilsWords = (t: Tools, foils: readonly number[], piece?: Piece) =>
  `${t.capital(pieces(t).word(foils.length, piece))} ${t.runs(foils, (from, to) => `${from}–${to}`)}`
