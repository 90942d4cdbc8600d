import { pieceWords } from "../../pieceWords"
import type { Tools } from "../../tools"

export const pieces = (t: Tools) =>
  pieceWords(t, {
    foil: { one: "papillote", other: "papillotes" },
    panel: { one: "mèche", other: "mèches" },
    both: { one: "papillote ou mèche", other: "papillotes et mèches" },
  })
