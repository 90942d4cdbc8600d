type View = "front" | "left" | "right" | "back" | "top"

/** The words in the corners of a view, and under it. */
export const views = () => ({
  titles: {
    front: "FRENTE",
    left: "IZQ. DE CLIENTE",
    right: "DER. DE CLIENTE",
    back: "DETRÁS",
    top: "ARRIBA",
  } satisfies Record<View, string>,
  inMirror: "EN EL ESPEJO",
  /** Which side of the client lies on a side of a view, in two lines. */
  sides: { left: ["IZQ. DE", "CLIENTE"], right: ["DER. DE", "CLIENTE"] },
  captions: {
    front: "Frente",
    left: "Izq. de cliente",
    right: "Der. de cliente",
    back: "Detrás",
    top: "Arriba",
  } satisfies Record<View, string>,
  frontInMirror: "Frente, en el espejo",
  leftOut: "fuera",
  twice: "doble",
})
