import type { buttons as english } from "../../en/chair/buttons"

export const buttons: typeof english = {
  undo: "Deshacer toque",
  takeOver: "Controlar aquí",
  wentOnEarlier: "Se puso antes",
  off: "Retirado",
  rinseNow: "Enjuagar ya",
  heatOn: "Calor puesto",
  tonerOff: "Enjuagado",
  tonerOn: (toner) => `${toner}: puesto`,
}
