import { pieceWords } from "../../pieceWords"
import type { Tools } from "../../tools"

export const pieces = (t: Tools) =>
  pieceWords(t, {
    foil: { one: "foil", other: "foils" },
    panel: { one: "panel", other: "panels" },
    both: { one: "foil or panel", other: "foils and panels" },
  })
