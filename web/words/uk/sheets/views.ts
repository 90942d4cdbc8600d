import type { SheetsWords } from "../../en/sheets/sheets"

/** The words in the corners of a view, and under it. */
export const views = (): SheetsWords["views"] => ({
  titles: {
    front: "СПЕРЕДУ",
    left: "ЛІВИЙ БІК КЛІЄНТА",
    right: "ПРАВИЙ БІК КЛІЄНТА",
    back: "ЗЗАДУ",
    top: "ЗВЕРХУ",
  },
  inMirror: "У ДЗЕРКАЛІ",
  sides: { left: ["ЛІВИЙ БІК", "КЛІЄНТА"], right: ["ПРАВИЙ БІК", "КЛІЄНТА"] },
  captions: {
    front: "Спереду",
    left: "Лівий бік клієнта",
    right: "Правий бік клієнта",
    back: "Ззаду",
    top: "Зверху",
  },
  frontInMirror: "Спереду, у дзеркалі",
  leftOut: "залишено",
  twice: "двічі",
})
