type View = "front" | "left" | "right" | "back" | "top"

/** The words in the corners of a view, and under it. */
export const views = () => ({
  titles: {
    front: "FACE",
    left: "SA GAUCHE",
    right: "SA DROITE",
    back: "ARRIÈRE",
    top: "DESSUS",
  } satisfies Record<View, string>,
  inMirror: "DANS LE MIROIR",
  /** Which side of the client lies on a side of a view, in two lines. */
  sides: { left: ["SA", "GAUCHE"], right: ["SA", "DROITE"] },
  captions: {
    front: "Face",
    left: "Sa gauche",
    right: "Sa droite",
    back: "Arrière",
    top: "Dessus",
  } satisfies Record<View, string>,
  frontInMirror: "Face, dans le miroir",
  leftOut: "laissée",
  twice: "deux fois",
})
