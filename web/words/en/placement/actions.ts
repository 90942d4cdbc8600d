/** What one tap does to the sections in hand, or with none in hand to the head. */
export const actions = () => ({
  title: "What to do",
  repeatBehind: "Repeat behind",
  thinner: "Thinner",
  thicker: "Thicker",
  mirror: "Mirror",
  towardsHairline: "Towards the hairline",
  awayFromHairline: "Away from it",
  stackBehind: "Stack behind…",
  leaveBetween: "Leave out the hair between these two",
  leaveVeil: "Leave out a veil",
  leaveBabyHairs: "Leave out baby hairs",
  copy: "Copy",
  earlier: "Earlier",
  later: "Later",
  more: "More",
  delete: "Delete",
  /** What hair left out is called on the map and in the list. */
  names: {
    veil: "Veil",
    babyHairs: "Baby hairs",
    between: (front: string, back: string) => `Space between ${front} and ${back}`,
  },
})
