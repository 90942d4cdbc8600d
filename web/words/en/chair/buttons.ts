/** What the buttons of the chair say: the sentences that send someone to a button say the same. */
export const buttons = {
  undo: "Undo tap",
  takeOver: "Control it here",
  wentOnEarlier: "It went on earlier",
  off: "Off",
  rinseNow: "Rinse now",
  heatOn: "Heat on",
  tonerOff: "Rinsed off",
  tonerOn: (toner: string) => `${toner} on`,
}
