import { pieceWords } from "../../pieceWords"
import type { Tools } from "../../tools"

export const pieces = (t: Tools) =>
  pieceWords(t, {
    foil: { one: "papel", other: "papeles" },
    panel: { one: "panel", other: "paneles" },
    both: { one: "papel o panel", other: "papeles y paneles" },
  })
