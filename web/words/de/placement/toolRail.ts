import type { toolRail as english } from "../../en/placement/toolRail"

/** What the hand does on the map, and how this hand works. */
export const toolRail: typeof english = (t, { kinds }) => ({
  draw: "Zeichnen",
  tools: {
    select: "Auswählen",
    slice: t.capital(kinds.slice),
    weave: t.capital(kinds.weave),
    backcomb: t.capital(kinds.backcomb),
    painted: "Malen",
    "left-out": "Auslassen",
    divide: "Abteilen",
    hairline: "Haarlinie",
  },
  partingShape: "Scheitelform",
  ways: { hairline: "An der Haarlinie", straight: "Gerade", freehand: "Freihand" },
  takeHair: "Haar vor oder hinter dem Scheitel",
  taken: { front: "Davor", behind: "Dahinter" },
  depth: "Tiefe",
  snap: "Einrasten",
  gapToLast: "Abstand zum letzten",
  hand: "Optionen",
  leftHanded: "Linkshändig",
  penOnly: "Nur mit Stift zeichnen",
  keys: "Tasten ?",
})
