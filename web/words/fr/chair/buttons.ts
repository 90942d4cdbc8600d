import type { buttons as english } from "../../en/chair/buttons"

export const buttons: typeof english = {
  undo: "Défaire l’appui",
  takeOver: "La commander ici",
  wentOnEarlier: "Posée plus tôt",
  off: "Retirer",
  rinseNow: "Rincer maintenant",
  heatOn: "Chaleur mise",
  tonerOff: "Rincé",
  tonerOn: (toner) => `Appliquer : ${toner}`,
}
