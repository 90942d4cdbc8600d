import type { PlacementWords } from "../../en/placement/placement"
import type { Tools } from "../../tools"

/** A painted panel, laid flat. */
export const painting = (t: Tools): PlacementWords["painting"] => ({
  title: "Mèche posée à plat",
  edge: "Bord",
  edges: { straight: "Droit", v: "V", w: "W", u: "U", freehand: "Main levée" },
  high: "Le bord commence à",
  low: "Le bord descend de",
  feather: "Estompe",
  saturation: "Saturation",
  bands: { soft: "Bord doux", middle: "Milieu", full: "Plein" },
  assumed: "Hypothèse : personne n’a pesé la saturation d’un bord estompé.",
  share: (share) => `${t.percent(share)} de la mèche peints`,
  size: ({ widthMm, lengthMm }) => `Mèche de ${t.mm(widthMm)} × ${t.mm(lengthMm)}`,
  draw: "Tracer le bord d’un côté à l’autre de la mèche, au doigt ou au stylet.",
  at: ({ place, of }) => `Bord, point ${t.whole(place)} sur ${t.whole(of)}`,
})
