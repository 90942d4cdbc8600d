import type { Piece } from "../../../core/kinds/kindRecord"
import { pieceWords } from "../../pieceWords"
import type { Tools } from "../../tools"

export const pieces = (t: Tools) =>
  pieceWords(t, {
    foil: { one: "фольга", few: "фольги", many: "фольг", other: "фольги" },
    panel: { one: "панель", few: "панелі", many: "панелей", other: "панелі" },
    both: {
      one: "фольга чи панель",
      few: "фольги й панелі",
      many: "фольг і панелей",
      other: "фольги й панелі",
    },
  })

/** As the object of what is done to it. */
export const pieceAsObject = (piece: Piece = "foil"): string =>
  ({ foil: "фольгу", panel: "панель", both: "фольгу чи панель" })[piece]
