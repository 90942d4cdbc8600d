import type { PlacementWords } from "../../en/placement/placement"
import type { Tools } from "../../tools"

/** A painted panel, laid flat. */
export const painting = (t: Tools): PlacementWords["painting"] => ({
  title: "Панель, покладена рівно",
  edge: "Край",
  edges: { straight: "Рівний", v: "V", w: "W", u: "U", freehand: "Від руки" },
  high: "Край починається на",
  low: "Край опускається на",
  feather: "Розтушування",
  saturation: "Насиченість",
  bands: { soft: "М’який край", middle: "Середина", full: "Повно" },
  assumed: "Припущення: насиченість розтушованого краю ніхто не зважував.",
  share: (share) => `Замальовано ${t.percent(share)} панелі`,
  size: ({ widthMm, lengthMm }) => `Панель ${t.mm(widthMm)} × ${t.mm(lengthMm)}`,
  draw: "Проведіть край упоперек панелі пальцем чи пером.",
  at: ({ place, of }) => `Край, місце ${t.whole(place)} з ${t.whole(of)}`,
})
