import { pieceWords } from "../../pieceWords"
import type { Tools } from "../../tools"

export const pieces = (t: Tools) =>
  pieceWords(t, {
    foil: { one: "Folie", other: "Folien" },
    panel: { one: "Malpartie", other: "Malpartien" },
    both: { one: "Folie oder Malpartie", other: "Folien und Malpartien" },
  })
