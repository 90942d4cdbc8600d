import type { PlacementWords } from "../../en/placement/placement"
import type { Tools } from "../../tools"

/** A painted panel, laid flat. */
export const painting = (t: Tools): PlacementWords["painting"] => ({
  title: "Partie flach aufgelegt",
  edge: "Rand",
  edges: { straight: "Gerade", v: "V", w: "W", u: "U", freehand: "Freihand" },
  high: "Rand beginnt bei",
  low: "Rand fällt um",
  feather: "Auslauf",
  saturation: "Wie satt",
  bands: { soft: "Weicher Rand", middle: "Mitte", full: "Satt" },
  assumed: "Annahme: Wie satt ein auslaufender Rand ist, hat niemand gewogen.",
  share: (share) => `${t.percent(share)} der Partie bemalt`,
  size: ({ widthMm, lengthMm }) => `Partie ${t.mm(widthMm)} × ${t.mm(lengthMm)}`,
  draw: "Den Rand mit Finger oder Stift quer über die Partie ziehen.",
  at: ({ place, of }) => `Rand, Stelle ${t.whole(place)} von ${t.whole(of)}`,
})
