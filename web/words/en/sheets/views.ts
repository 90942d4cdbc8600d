type View = "front" | "left" | "right" | "back" | "top"

/** The words in the corners of a view, and under it. */
export const views = () => ({
  titles: {
    front: "FRONT",
    left: "CLIENT’S LEFT",
    right: "CLIENT’S RIGHT",
    back: "BACK",
    top: "TOP",
  } satisfies Record<View, string>,
  inMirror: "IN THE MIRROR",
  /** Which side of the client lies on a side of a view, in two lines. */
  sides: { left: ["CLIENT’S", "LEFT"], right: ["CLIENT’S", "RIGHT"] },
  captions: {
    front: "Front",
    left: "Client’s left",
    right: "Client’s right",
    back: "Back",
    top: "Top",
  } satisfies Record<View, string>,
  frontInMirror: "Front, in the mirror",
  leftOut: "left out",
  twice: "twice",
})
