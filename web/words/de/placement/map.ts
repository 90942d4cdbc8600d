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
    strokeCancelled: "Strich abgebrochen",
    snapped: ({ to, gapMm }) =>
      to === "last parting"
        ? `Eingerastet: parallel zum letzten Scheitel, Abstand ${t.mm(gapMm, 1)}`
        : `Eingerastet: ${directions[to]}`,
    told: ({ done, where, runs }) => `${done}: ${where}, ${runs}`,
  }
}
