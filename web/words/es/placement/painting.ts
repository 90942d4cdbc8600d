import type { PlacementWords } from "../../en/placement/placement"
import type { Tools } from "../../tools"

/** A painted panel, laid flat. */
export const painting = (t: Tools): PlacementWords["painting"] => ({
  title: "Panel extendido",
  edge: "Borde",
  edges: { straight: "Recto", v: "V", w: "W", u: "U", freehand: "A mano alzada" },
  high: "El borde empieza al",
  low: "El borde baja",
  feather: "Difuminado",
  saturation: "Saturación",
  bands: { soft: "Borde suave", middle: "Medio", full: "Lleno" },
  assumed: "Suposición: nadie ha pesado cuánto producto lleva un borde difuminado.",
  share: (share) => `${t.percent(share)} del panel pintado`,
  size: ({ widthMm, lengthMm }) => `Panel de ${t.mm(widthMm)} × ${t.mm(lengthMm)}`,
  draw: "Dibuje el borde de lado a lado del panel con el dedo o el lápiz.",
  at: ({ place, of }) => `Borde, punto ${t.whole(place)} de ${t.whole(of)}`,
})
