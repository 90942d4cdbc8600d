import type { lesson as english } from "../../en/sheets/lesson"

/** The text of a handout, where an educator changes it. */
export const lesson: typeof english = (t) => ({
  edit: "Cambiar su texto…",
  asDrawn: "Volver a lo que dice el plan",
  title: "Lo que lee la clase",
  name: "Título",
  aim: "Objetivo",
  tools: "Herramientas, una por línea",
  steps: "Cómo se hace, un paso por línea",
  checks: "Revisa tu trabajo, un punto por línea",
  faults: "Fallos frecuentes",
  addFault: "Añadir un fallo",
  remove: "Quitar",
  removeFault: (number) => `Quitar el fallo ${t.whole(number)}`,
  follows: "Lo que dejes como está seguirá al plan. La clase lo lee: no escribas nada de una clienta.",
  keep: "Guardar este texto",
})
