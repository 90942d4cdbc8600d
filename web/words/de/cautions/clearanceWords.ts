import type { clearanceWords as english } from "../../en/cautions/clearanceWords"

type Told = Parameters<ReturnType<typeof english>["head"]>[0]

/** The three states of a plan: do not mix, not asked yet, cleared. */
export const clearanceWords: typeof english = (t) => {
  const stops = (count: number) =>
    t.count(count, { one: "Nicht mischen: # Stopp", other: "Nicht mischen: # Stopps" })
  const notAsked = (count: number) =>
    t.count(count, { one: "Noch nicht gefragt: #", other: "Noch nicht gefragt: #" })
  const clearedBy = ({ by, day }: Told) => {
    const things = t.and([
      t.count(by.answers, { one: "# Antwort", other: "# Antworten" }),
      ...(by.tests > 0
        ? [t.count(by.tests, { one: "# Hauttest ohne Reaktion", other: "# Hauttests ohne Reaktion" })]
        : []),
      ...(by.letters > 0
        ? [t.count(by.letters, { one: "# ärztliches Schreiben", other: "# ärztliche Schreiben" })]
        : []),
      ...(by.overrides > 0
        ? [t.count(by.overrides, { one: "# übergangener Stopp", other: "# übergangene Stopps" })]
        : []),
    ])
    return by.askedBy.trim() === ""
      ? `Freigegeben am ${t.date(day)}. Grundlage: ${things}.`
      : `Freigegeben am ${t.date(day)} (gefragt von ${by.askedBy}). Grundlage: ${things}.`
  }
  return {
    pill: (told) =>
      told.state === "stop"
        ? stops(told.stops.length)
        : told.state === "not-asked"
          ? notAsked(told.notAsked.length)
          : "Heute freigegeben",
    head: (told) =>
      told.state === "stop"
        ? `${stops(told.stops.length)}.`
        : told.state === "not-asked"
          ? `${notAsked(told.notAsked.length)}.`
          : clearedBy(told),
    sentence: (told) =>
      told.state === "stop"
        ? t.count(told.stops.length, {
            one: "NICHT MISCHEN: # Stopp hält den Plan an.",
            other: "NICHT MISCHEN: # Stopps halten den Plan an.",
          })
        : told.state === "not-asked"
          ? t.count(told.notAsked.length, {
              one: "NICHT FREIGEGEBEN: # Angabe ist noch nicht erfragt.",
              other: "NICHT FREIGEGEBEN: # Angaben sind noch nicht erfragt.",
            })
          : clearedBy(told),
    list: "Was fehlt",
    stopsTitle: "Nicht mischen",
    notAskedTitle: "Noch nicht gefragt",
    none: "Für heute fehlt nichts.",
    goTo: "Hingehen",
    close: "Schließen",
    aloud: {
      title: "Laut gefragt",
      aside: (count) =>
        t.count(count, {
          one: "Eine Frage kann mit „Nein“ beantwortet werden, indem Sie sie laut stellen. Ihr Name bleibt bei der Antwort.",
          other:
            "# Fragen können mit „Nein“ beantwortet werden, indem Sie sie laut stellen. Ihr Name bleibt bei den Antworten.",
        }),
      by: "Ihr Name",
      sign: "Laut gefragt: Nein zu allen",
      wanting: "Zuerst Ihren Namen eingeben.",
    },
    chairStop: "Nicht mischen. Zuerst die Stopps klären.",
    chairNotAsked: "Dies vor dem Start der Uhr fragen.",
    chairHeld: (piece) =>
      `Ein Stopp ist dazugekommen. ${{ foil: "Keine Folie mehr", panel: "Keine Malpartie mehr", both: "Keine Folie oder Malpartie mehr" }[piece]} beginnen und keine Schale mischen. Was liegt, kontrollieren und ausspülen.`,
    chairOpen: (piece) =>
      `Eine Frage ist wieder offen. ${{ foil: "Keine Folie mehr", panel: "Keine Malpartie mehr", both: "Keine Folie oder Malpartie mehr" }[piece]} beginnen und keine Schale mischen, bevor sie beantwortet ist. Was liegt, kontrollieren und ausspülen.`,
  }
}
