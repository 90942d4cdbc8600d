import type { ProductSheet } from "../../../../presets/formula/productSheet"
import type { Consultation } from "../../document/consultation"
import type { MixRatio } from "../../mixing/strength"
import type { Now } from "./alertTest"
import type { CautionCode } from "./cautionCode"

/** Everything the rules look at: the client, what is to be mixed, and when. */
export type Visit = { consultation: Consultation; mixes: readonly PlannedMix[]; now: Now }

/** A mix as the rules see it. A sheet of null: the product is not on the shelf. */
export type PlannedMix = {
  /** A letter, or one of the toner ids. */
  id: string
  product: string
  sheet: ProductSheet | null
  developerVolume: number
  ratio: MixRatio
  heatMin: number
  /** What the sections of this mix come near. */
  near: { hairline: boolean; scalp: boolean; cushion: boolean }
}

/** What the toners go by among the mixes, which have a letter. */
export const tonerIds = { toner: "toner", rootShade: "root-shade" } as const

export type Decider = "law" | "maker" | "doctor" | "colourist"

/** Where a rule is from, by the name its citation goes by. */
export type Source =
  | "common-practice"
  | "label-words"
  | "label-words-and-trade-body"
  | "legal-strength"
  | "alert-test-hours"
  | "test-every-time"
  | "trade-body"
  | "eyes"
  | "persulfates"
  | "persulfates-at-work"
  | "asthma"
  | "dye-diffusion"
  | "heat-burns"
  | "product-sheet"

/** Where on the screens a rule is answered. */
export type Place = "ask" | "tests" | "hair" | "formula" | "timing"

/** One row: a stop holds the mix until it is answered, a caution only says. */
export type Rule = {
  severity: "stop" | "caution"
  decides: Decider
  /** Whether a written reason may pass it. */
  passable: boolean
  /** Whether it may be named on a sheet that hangs where others read it: what tells an illness may not. */
  isPublic: boolean
  at: Place
  source: Source
  finds(visit: Visit): readonly Found[]
}
/** `about` is what a pass of it holds for: once that is another, it is to be passed again. */
export type Found = { why: CautionCode; mixes?: readonly string[]; about?: string }

type Row = Omit<Rule, "severity" | "passable">

export const stop = (row: Row): Rule => ({ severity: "stop", passable: true, ...row })
export const finalStop = (row: Row): Rule => ({ severity: "stop", passable: false, ...row })
export const caution = (row: Row): Rule => ({ severity: "caution", passable: true, ...row })

export const when = (isFound: boolean | undefined, why: CautionCode): readonly Found[] =>
  isFound ? [{ why }] : []

/** A finding for each mix that gives a reason; mixes that give the same one share it. */
export function eachMix(
  { mixes }: Visit,
  whyOf: (mix: PlannedMix) => CautionCode | null,
  aboutOf: (mix: PlannedMix) => string = ({ product }) => product,
): readonly Found[] {
  const found = mixes.flatMap((mix) => {
    const why = whyOf(mix)
    return why === null ? [] : [{ key: JSON.stringify(why), why, mixes: [mix.id], about: aboutOf(mix) }]
  })
  return [...new Set(found.map(({ key }) => key))].map((key) => {
    const own = found.filter((each) => each.key === key)
    const [{ why, about }] = own
    return { why, about, mixes: own.flatMap((each) => each.mixes) }
  })
}
