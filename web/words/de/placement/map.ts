import type { map as english } from "../../en/placement/map"

/** Words on the map and beside the hand. */
export const map: typeof english = (t, { directions }) => {
  const [left, right] = ["Gast links", "Gast rechts"]
  const views: ReturnType<typeof english>["views"] = {
    front: "Vorn",
    left,
    right,
    back: "Hinten",
    top: "Oben",
    turned: "Drehansicht",
    unrolled: "Kopf flach",
  }
  return {
    title: "Kopfkarte",
    views,
    edges: {
      front: [right, left],
      left: ["Gesicht", "Hinterkopf"],
      right: ["Hinterkopf", "Gesicht"],
      back: [left, right],
      top: [left, right],
      turned: null,
      unrolled: [left, right],
    },
    enlarge: (view) => `${views[view]}: groß anzeigen`,
    framings: { hairline: "Haarlinie", whole: "Ganzer Kopf" },
    firstStroke: "Entlang der gepunkteten Linie ziehen",
    turn: "Kopf drehen",
    turns: { left: "← Links", right: "Rechts →", higher: "↑ Höher", lower: "↓ Tiefer" },
    /** What the large view shows, for whoever does not see it. */
    summary: ({ left, right, centre }) => {
      const sides = [
        [right, `${t.whole(right)} rechts`],
        [left, `${t.whole(left)} links`],
        [centre, `${t.whole(centre)} in der Mitte`],
      ] as const
      const foils = t.count(left + right + centre, { one: "# Folie", other: "# Folien" })
      const shown = sides.filter(([count]) => count > 0).map(([, words]) => words)
      return shown.length === 0 ? "Keine Folien auf dieser Seite des Kopfes" : `${foils}: ${shown.join(", ")}`
    },
    /** What a tap on the map took in hand; hair left out has no number of its own. */
    selected: ({ name, what }) => (name === null ? `Gewählt: ${what}` : `Gewählt: ${name}, ${what}`),
    strokeCancelled: "Strich abgebrochen",
    snapped: ({ to, gapMm }) =>
      to === "last parting"
        ? `Eingerastet: parallel zum letzten Scheitel, Abstand ${t.mm(gapMm, 1)}`
        : `Eingerastet: ${directions[to]}`,
    told: ({ done, where, runs }) => `${done}: ${where}, ${runs}`,
  }
}
