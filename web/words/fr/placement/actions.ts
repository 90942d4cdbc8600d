/** What one tap does to the sections in hand, or with none in hand to the head. */
export const actions = () => ({
  title: "Que faire",
  repeatBehind: "Répéter derrière",
  thinner: "Plus fine",
  thicker: "Plus épaisse",
  mirror: "Miroir",
  towardsHairline: "Vers la lisière",
  awayFromHairline: "À l’opposé",
  stackBehind: "Empiler derrière…",
  leaveBetween: "Laisser les cheveux entre ces deux-là",
  leaveVeil: "Laisser un voile",
  leaveBabyHairs: "Laisser les follets",
  copy: "Copier",
  earlier: "Plus tôt",
  later: "Plus tard",
  more: "Plus",
  delete: "Supprimer",
  /** What hair left out is called on the map and in the list. */
  names: {
    veil: "Voile",
    babyHairs: "Follets",
    between: (front: string, back: string) => `Espace entre ${front} et ${back}`,
  },
})
