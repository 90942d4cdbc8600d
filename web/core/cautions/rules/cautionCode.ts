import type { Piece } from "../../kinds/kindRecord"
import type { AlertTestFault } from "./alertTest"

/** What a sheet may leave unsaid that the plan goes by. */
export type SheetGap = "longest-time" | "on-scalp" | "alert-test" | "pot-life"
export type ToneWanting = "toner" | "root-shade"

/** What the rules find, a code with what its sentence needs. A mix goes by its letter or its toner's id. */
export type CautionCode =
  | { code: "under-age"; youngestYears: number }
  /** The product whose patch test reacted; null where the client told of it. */
  | { code: "past-reaction"; product: string | null }
  | { code: "breathing-reaction" }
  | { code: "mixer-breathing" }
  | { code: "dye-allergy" }
  | { code: "scalp-hurt"; scalp: "irritated" | "broken" }
  | { code: "scalp-today" }
  | { code: "sensitive-scalp" }
  | { code: "face-rash" }
  | { code: "alert-test-wanting"; fault: AlertTestFault }
  | { code: "toner-not-chosen"; wanting: readonly ToneWanting[]; testHours: number }
  | { code: "expecting" }
  | { code: "scalp-condition" }
  | { code: "chemotherapy" }
  | { code: "asthma" }
  | { code: "medicines" }
  | { code: "other-allergy" }
  /** What stands on the client's card, in the words written there. */
  | { code: "card-dye-allergy"; to: readonly string[] }
  | { code: "card-allergy"; to: readonly string[] }
  | { code: "black-henna" }
  | { code: "hairline-loss" }
  | { code: "eyes" }
  | { code: "metallic-salts" }
  | { code: "henna" }
  | { code: "strand-test-failed"; product: string }
  | { code: "over-stretched" }
  | { code: "recent-relaxer" }
  | { code: "unknown-content" }
  | { code: "extensions" }
  | { code: "strand-test-first" }
  | { code: "overlap" }
  /** Foils of one mix that would coat lightened hair: from where to where along the strand, mm from the scalp. */
  | { code: "coated-twice"; foils: readonly number[]; piece?: Piece; fromMm: number; toMm: number }
  | { code: "porous" }
  | { code: "over-legal-limit"; mix: string; onHeadPercent: number; mostPercent: number }
  | { code: "hairline-strength"; mix: string; volume: number; mostVolume: number }
  | { code: "strong-developer"; mix: string; volume: number; usualMostVolume: number }
  | {
      code: "developer-not-on-sheet"
      mix: string
      product: string
      volume: number
      listed: readonly number[]
    }
  | { code: "ratio-not-on-sheet"; mix: string; product: string; parts: number; low: number; high: number }
  | { code: "off-scalp-product"; mix: string; product: string }
  /** `allowedMin`: null where the sheet is silent, 0 where it forbids heat. */
  | { code: "heat"; mix: string; heatMin: number; allowedMin: number | null }
  | { code: "heat-place"; mix: string; forbiddenVolume: number }
  /** Longer than is usual, though the sheet allows it. */
  | { code: "heat-time"; mix: string; heatMin: number; usualMostMin: number }
  | { code: "open-air-dries"; mix: string }
  /** On the roots, where the scalp's warmth lifts faster, over a weaker one on the ends. */
  | { code: "stronger-roots"; mix: string; volume: number; endsMix: string; endsVolume: number }
  | { code: "no-sheet"; mix: string; product: string }
  | { code: "sheet-silent"; mix: string; product: string; gaps: readonly SheetGap[] }

/** What is wrong with a mix, and what is said of client, hair and tests. */
export type MixCode = Extract<CautionCode, { mix: string }>
export type ClientCode = Exclude<CautionCode, MixCode>
