import type { settings as english } from "../../en/timing/settings"
import { pieces } from "../common/pieces"

type Pace = Parameters<ReturnType<typeof english>["line"]>[0]["pace"]

/** How the visit goes: one line that says it, and the fields that change it. */
export const settings: typeof english = (t) => {
  const pace: Record<Pace, string> = {
    expert: "Profitempo",
    usual: "Übliches Tempo",
    learner: "Lerntempo",
    learnt: "Gemessenes Tempo",
  }
  return {
    title: "Wie der Termin abläuft",
    change: "Ändern",
    close: "Schließen",
    line: (now) =>
      `${[
        pace[now.pace],
        now.people === 1 ? "eine Fachkraft" : "Fachkraft und Assistenz",
        now.rinse === "each"
          ? `jede ${pieces(t).word(1, now.piece)} ab, sobald fertig`
          : "alle zusammen ausgespült",
        ...(now.heatMin === null ? [] : [`${t.minutes(now.heatMin)} Wärme`]),
        ...(now.breaks === 0 ? [] : [t.count(now.breaks, { one: "# Pause", other: "# Pausen" })]),
        ...(now.isDried ? [] : ["ohne Trocknen"]),
        now.bookingMin === null ? "Termindauer nicht gesetzt" : `${t.minutes(now.bookingMin)} gebucht`,
      ].join(", ")}.`,

    pace: "Tempo",
    paceOption: ({ name, low, high }) =>
      `${pace[name]} ${t.spread(t.number(low, 1), t.number(high, 1))} min pro Folie`,

    working: "Es arbeiten",
    alone: "Eine Fachkraft",
    two: "Fachkraft und Assistenz",
    who: "Fachkraft",
    assistant: "Assistenz",
    assistantSide: "Seite der Assistenz",
    sides: { left: "Gast links", right: "Gast rechts" },

    off: (piece) => `${pieces(t).word(2, piece)} abnehmen`,
    each: "Jede, sobald sie fertig ist",
    together: "Alle zusammen ausspülen",

    lift: "Aufhellung",
    asAsked: "Wie mit dem Gast besprochen",
    notSet: "Nicht gesetzt",
    levels: "Von Tonhöhe zu Tonhöhe",
    fromTo: ({ from, to }) => `Von Tonhöhe ${t.number(from)} bis ${t.number(to)}`,
    levelNow: "Tonhöhe jetzt",
    target: "Zieltonhöhe",

    appointment: "Termindauer",
    inMinutes: "Minuten am Stuhl",
    booked: "Gebuchte Minuten",
    drying: "Trocknen",
    dried: "Am Stuhl",
    damp: "Entfällt",

    heat: "Wärme, wenn die Herstellerangaben sie erlauben",
    noHeat: "Keine",
    minutes: (minutes) => t.minutes(minutes),
    temperature: "Temperatur, falls gemessen",

    breaks: "Pausen",
    fromMin: "Ab Minute",
    toMin: "Bis Minute",
    whoRests: "Wer Pause hat",
    rests: { both: "Beide in Pause", "1": "Fachkraft in Pause", "2": "Assistenz in Pause" },
    addBreak: "Pause hinzufügen",
    removeBreak: "Entfernen",
  }
}
