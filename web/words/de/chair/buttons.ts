import type { buttons as english } from "../../en/chair/buttons"

export const buttons: typeof english = {
  undo: "Tippen zurück",
  takeOver: "Hier steuern",
  wentOnEarlier: "Lag schon früher",
  off: "Ab",
  rinseNow: "Jetzt ausspülen",
  heatOn: "Wärme an",
  tonerOff: "Ausgespült",
  tonerOn: (toner) => `${toner} auf`,
}
