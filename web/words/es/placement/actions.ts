/** What one tap does to the sections in hand, or with none in hand to the head. */
export const actions = () => ({
  title: "Qué hacer",
  repeatBehind: "Repetir detrás",
  thinner: "Más fino",
  thicker: "Más grueso",
  mirror: "Reflejar",
  towardsHairline: "Hacia el contorno",
  awayFromHairline: "Lejos del contorno",
  stackBehind: "Apilar detrás…",
  leaveBetween: "Dejar fuera el cabello entre estos dos",
  leaveVeil: "Dejar capa superior",
  leaveBabyHairs: "Dejar pelitos de bebé",
  copy: "Copiar",
  earlier: "Antes",
  later: "Después",
  more: "Más",
  delete: "Eliminar",
  /** What hair left out is called on the map and in the list. */
  names: {
    veil: "Capa superior",
    babyHairs: "Pelitos de bebé",
    between: (front: string, back: string) => `Espacio entre ${front} y ${back}`,
  },
})
