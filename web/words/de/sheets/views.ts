import type { views as english } from "../../en/sheets/views"

/** The words in the corners of a view, and under it. */
export const views: typeof english = () => ({
  titles: {
    front: "VORN",
    left: "GAST LINKS",
    right: "GAST RECHTS",
    back: "HINTEN",
    top: "OBEN",
  },
  inMirror: "IM SPIEGEL",
  sides: { left: ["GAST", "LINKS"], right: ["GAST", "RECHTS"] },
  captions: {
    front: "Vorn",
    left: "Gast links",
    right: "Gast rechts",
    back: "Hinten",
    top: "Oben",
  },
  frontInMirror: "Vorn, im Spiegel",
  leftOut: "ausgelassen",
  twice: "doppelt",
})
