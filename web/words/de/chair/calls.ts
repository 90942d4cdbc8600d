import type { Piece } from "../../../core/kinds/kindRecord"
import type {
  calls as english,
  foilsWords as englishFoils,
  toners as englishToners,
} from "../../en/chair/calls"
import { pieces } from "../common/pieces"

export const toners: typeof englishToners = {
  "root-melt": "Ansatzverlauf",
  mids: "Toner, Längen",
  hairline: "Toner, Haarlinie",
}

/** What is due at the chair: as it is shown, second by second, and as it is spoken once. */
export const calls: typeof english = (t) => {
  const who = (foils: readonly number[], piece?: Piece) => foilsWords(t, foils, piece)
  return {
    due: "Fällig",
    toners,
    more: (count) => `und ${t.whole(count)} mehr`,
    freshBowl: "antippen, wenn eine frische Schale gemischt ist",
    carryOn: (foils, piece) => `Weiter einwirken, ${who(foils, piece)}`,
    off: (foil) => `Ab: ${foil}`,
    rootsOn: (foil: number) => `Ansatz ${t.whole(foil)} ist drauf`,
    checkOne: "Eine kontrollieren",
    rinse: "Ausgespült",

    shown: {
      "bowl-ahead": ({ bowl, mix, inMs }) =>
        `Schale ${bowl} von Mischung ${mix}: in ${t.clock(inMs)} aufbrauchen`,
      "bowl-past": ({ bowl, mix, byMs }) =>
        `Schale ${bowl} von Mischung ${mix}: ${t.clock(byMs)} über der Verarbeitungszeit, frische mischen`,
      "heat-ahead": ({ inMs }) => `Wärme: aus in ${t.clock(inMs)}`,
      "heat-past": ({ byMs }) => `Wärme: jetzt aus, ${t.clock(byMs)} darüber`,
      "take-off": ({ foils, piece }) => `${who(foils, piece)}: jetzt abnehmen, eine Kontrolle sagte Stopp`,
      "at-goal": ({ foils, piece }) => `${who(foils, piece)}: jetzt abnehmen, Zieltonhöhe erreicht`,
      "planned-ahead": ({ foils, piece, inMs }) =>
        `${who(foils, piece)}: Abnahme geplant in ${t.clock(inMs)}`,
      "planned-off": ({ foils, piece, byMs }) =>
        byMs < 60_000
          ? `${who(foils, piece)}: Abnahme jetzt geplant, kontrollieren`
          : `${who(foils, piece)}: Abnahme war vor ${t.clock(byMs)} geplant, kontrollieren`,
      "toner-ahead": ({ zone, inMs }) => `${toners[zone]}: ausspülen in ${t.clock(inMs)}`,
      "toner-off": ({ zone, byMs }) =>
        `${toners[zone]}: kontrollieren und ausspülen, ${t.clock(byMs)} darüber`,
      "toner-limit-ahead": ({ zone, inMs }) => `${toners[zone]}: Höchstzeit in ${t.clock(inMs)}`,
      "toner-limit": ({ zone, byMs }) =>
        `${toners[zone]}: jetzt ausspülen, ${t.clock(byMs)} über der Höchstzeit`,
      "limit-ahead": ({ foils, piece, inMs }) => `${who(foils, piece)}: Höchstzeit in ${t.clock(inMs)}`,
      "limit-past": ({ foils, piece, byMs }) =>
        foils.length === 1
          ? `${who(foils, piece)}: jetzt abnehmen, ${t.clock(byMs)} über der Höchstzeit`
          : `${who(foils, piece)}: jetzt abnehmen, bis zu ${t.clock(byMs)} über der Höchstzeit`,
      "roots-ahead": ({ foils, piece, mix, inMs }) =>
        `${who(foils, piece)}: Ansatz in ${t.clock(inMs)}, Mischung ${mix}`,
      "roots-now": ({ foils, piece, mix, byMs }) =>
        byMs < 60_000
          ? `${who(foils, piece)}: Ansatz auftragen, Mischung ${mix}`
          : `${who(foils, piece)}: Ansatz auftragen, Mischung ${mix}, ${t.clock(byMs)} zu spät`,
      "check-ahead": ({ foils, piece, inMs }) => `${who(foils, piece)}: Kontrolle in ${t.clock(inMs)}`,
      "check-now": ({ foils, piece }) => `${who(foils, piece)}: jetzt kontrollieren`,
      "check-late": ({ foils, piece, byMs }) =>
        `${who(foils, piece)}: jetzt kontrollieren, ${t.clock(byMs)} zu spät`,
    },

    spoken: {
      "bowl-ahead": ({ bowl, mix }) => `Schale ${bowl} von Mischung ${mix}: bald aufbrauchen.`,
      "bowl-past": ({ bowl, mix }) =>
        `Schale ${bowl} von Mischung ${mix}: Verarbeitungszeit vorbei, eine frische mischen.`,
      "heat-ahead": "Wärme bald aus.",
      "heat-past": "Wärme jetzt aus, dann kontrollieren.",
      "take-off": ({ foils, piece }) => `${who(foils, piece)}: jetzt abnehmen.`,
      "at-goal": ({ foils, piece }) => `${who(foils, piece)}: jetzt abnehmen.`,
      "planned-ahead": ({ foils, piece }) => `${who(foils, piece)}: Abnahme bald geplant.`,
      "planned-off": ({ foils, piece }) => `${who(foils, piece)}: Abnahme jetzt geplant.`,
      "toner-ahead": ({ zone }) => `${toners[zone]}: bald ausspülen.`,
      "toner-off": ({ zone }) => `${toners[zone]}: kontrollieren und ausspülen.`,
      "toner-limit-ahead": ({ zone }) => `${toners[zone]}: bald Höchstzeit.`,
      "toner-limit": ({ zone }) => `${toners[zone]}: jetzt ausspülen.`,
      "limit-ahead": ({ foils, piece }) => `${who(foils, piece)}: bald Höchstzeit.`,
      "limit-past": ({ foils, piece }) => `${who(foils, piece)}: jetzt abnehmen, Höchstzeit überschritten.`,
      "roots-ahead": ({ foils, piece, mix }) => `${who(foils, piece)}: bald der Ansatz, Mischung ${mix}.`,
      "roots-now": ({ foils, piece, mix }) => `${who(foils, piece)}: Ansatz auftragen, Mischung ${mix}.`,
      "check-ahead": ({ foils, piece }) => `${who(foils, piece)}: bald kontrollieren.`,
      "check-now": ({ foils, piece }) => `${who(foils, piece)}: jetzt kontrollieren.`,
      "check-late": ({ foils, piece }) => `${who(foils, piece)}: jetzt kontrollieren.`,
    },
  }
}

/** Foils by their numbers, three and more that follow each other as a span: "Folien 1 bis 5, 8". */
export const foilsWords: typeof englishFoils = (t, foils, piece) =>
  `${t.capital(pieces(t).word(foils.length, piece))} ${t.runs(foils, (from, to) => `${from} bis ${to}`)}`
