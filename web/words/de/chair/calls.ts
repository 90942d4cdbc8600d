import type {
  calls as english,
  foilsWords as englishFoils,
  toners as englishToners,
} from "../../en/chair/calls"

export const toners: typeof englishToners = {
  "root-melt": "Ansatzverlauf",
  mids: "Toner, Längen",
  hairline: "Toner, Haarlinie",
}

/** What is due at the chair: as it is shown, second by second, and as it is spoken once. */
export const calls: typeof english = (t) => {
  const who = (foils: readonly number[]) => foilsWords(t, foils)
  return {
    due: "Fällig",
    toners,
    more: (count) => `und ${t.whole(count)} mehr`,
    freshBowl: "antippen, wenn eine frische Schale gemischt ist",
    carryOn: (foils) => `Weiter einwirken, ${who(foils)}`,
    off: (foil) => `Ab: ${foil}`,
    checkOne: "Eine kontrollieren",
    rinse: "Ausgespült",

    shown: {
      "bowl-ahead": ({ bowl, mix, inMs }) =>
        `Schale ${bowl} von Mischung ${mix}: in ${t.clock(inMs)} aufbrauchen`,
      "bowl-past": ({ bowl, mix, byMs }) =>
        `Schale ${bowl} von Mischung ${mix}: ${t.clock(byMs)} über der Verarbeitungszeit, frische mischen`,
      "heat-ahead": ({ inMs }) => `Wärme: aus in ${t.clock(inMs)}`,
      "heat-past": ({ byMs }) => `Wärme: jetzt aus, ${t.clock(byMs)} darüber`,
      "take-off": ({ foils }) => `${who(foils)}: jetzt abnehmen, eine Kontrolle sagte Stopp`,
      "at-goal": ({ foils }) => `${who(foils)}: jetzt abnehmen, Zieltonhöhe erreicht`,
      "planned-ahead": ({ foils, inMs }) => `${who(foils)}: Abnahme geplant in ${t.clock(inMs)}`,
      "planned-off": ({ foils, byMs }) =>
        byMs < 60_000
          ? `${who(foils)}: Abnahme jetzt geplant, kontrollieren`
          : `${who(foils)}: Abnahme war vor ${t.clock(byMs)} geplant, kontrollieren`,
      "toner-ahead": ({ zone, inMs }) => `${toners[zone]}: ausspülen in ${t.clock(inMs)}`,
      "toner-off": ({ zone, byMs }) =>
        `${toners[zone]}: kontrollieren und ausspülen, ${t.clock(byMs)} darüber`,
      "toner-limit-ahead": ({ zone, inMs }) => `${toners[zone]}: Höchstzeit in ${t.clock(inMs)}`,
      "toner-limit": ({ zone, byMs }) =>
        `${toners[zone]}: jetzt ausspülen, ${t.clock(byMs)} über der Höchstzeit`,
      "limit-ahead": ({ foils, inMs }) => `${who(foils)}: Höchstzeit in ${t.clock(inMs)}`,
      "limit-past": ({ foils, byMs }) =>
        foils.length === 1
          ? `${who(foils)}: jetzt abnehmen, ${t.clock(byMs)} über der Höchstzeit`
          : `${who(foils)}: jetzt abnehmen, bis zu ${t.clock(byMs)} über der Höchstzeit`,
      "check-ahead": ({ foils, inMs }) => `${who(foils)}: Kontrolle in ${t.clock(inMs)}`,
      "check-now": ({ foils }) => `${who(foils)}: jetzt kontrollieren`,
      "check-late": ({ foils, byMs }) => `${who(foils)}: jetzt kontrollieren, ${t.clock(byMs)} zu spät`,
    },

    spoken: {
      "bowl-ahead": ({ bowl, mix }) => `Schale ${bowl} von Mischung ${mix}: bald aufbrauchen.`,
      "bowl-past": ({ bowl, mix }) =>
        `Schale ${bowl} von Mischung ${mix}: Verarbeitungszeit vorbei, eine frische mischen.`,
      "heat-ahead": "Wärme bald aus.",
      "heat-past": "Wärme jetzt aus, dann kontrollieren.",
      "take-off": ({ foils }) => `${who(foils)}: jetzt abnehmen.`,
      "at-goal": ({ foils }) => `${who(foils)}: jetzt abnehmen.`,
      "planned-ahead": ({ foils }) => `${who(foils)}: Abnahme bald geplant.`,
      "planned-off": ({ foils }) => `${who(foils)}: Abnahme jetzt geplant.`,
      "toner-ahead": ({ zone }) => `${toners[zone]}: bald ausspülen.`,
      "toner-off": ({ zone }) => `${toners[zone]}: kontrollieren und ausspülen.`,
      "toner-limit-ahead": ({ zone }) => `${toners[zone]}: bald Höchstzeit.`,
      "toner-limit": ({ zone }) => `${toners[zone]}: jetzt ausspülen.`,
      "limit-ahead": ({ foils }) => `${who(foils)}: bald Höchstzeit.`,
      "limit-past": ({ foils }) => `${who(foils)}: jetzt abnehmen, Höchstzeit überschritten.`,
      "check-ahead": ({ foils }) => `${who(foils)}: bald kontrollieren.`,
      "check-now": ({ foils }) => `${who(foils)}: jetzt kontrollieren.`,
      "check-late": ({ foils }) => `${who(foils)}: jetzt kontrollieren.`,
    },
  }
}

/** Foils by their numbers, three and more that follow each other as a span: "Folien 1 bis 5, 8". */
export const foilsWords: typeof englishFoils = (t, foils) =>
  `${t.count(foils.length, { one: "Folie", other: "Folien" })} ${t.runs(foils, (from, to) => `${from} bis ${to}`)}`
