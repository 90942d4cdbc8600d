import type { actions as english } from "../../en/placement/actions"

/** What one tap does to the sections in hand, or with none in hand to the head. */
export const actions: typeof english = () => ({
  title: "Was zu tun ist",
  repeatBehind: "Dahinter wiederholen",
  thinner: "Dünner",
  thicker: "Dicker",
  mirror: "Spiegeln",
  towardsHairline: "Zur Haarlinie",
  awayFromHairline: "Von ihr weg",
  stackBehind: "Dahinter stapeln…",
  leaveBetween: "Haar dazwischen auslassen",
  leaveVeil: "Schleier auslassen",
  leaveBabyHairs: "Babyhaare auslassen",
  copy: "Kopieren",
  earlier: "Früher",
  later: "Später",
  more: "Mehr",
  delete: "Löschen",
  /** What hair left out is called on the map and in the list. */
  names: {
    veil: "Schleier",
    babyHairs: "Babyhaare",
    between: (front, back) => `Haar zwischen ${front} und ${back}`,
  },
})
