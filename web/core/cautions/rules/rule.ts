import type { ProductSheet } from "../../../../presets/formula/productSheet"
import type { Consultation, Question, StandingAllergy } from "../../document/consultation"
import type { Piece } from "../../kinds/kindRecord"
import type { MixRatio } from "../../mixing/strength"
import type { Now } from "../../text/zonedTime"
import type { Days } from "../asking/questions"
import type { CautionCode } from "./cautionCode"

/** Everything the rules look at: the client, what is to be mixed, and when. */
export type Visit = {
  consultation: Consultation
  /** The allergies that stand on the client's card. */
  standing: readonly StandingAllergy[]
  mixes: readonly PlannedMix[]
  /** Every foil that would coat lightened hair. */
  twice: readonly PlannedTwice[]
  now: Now
  days: Days
}

/** A mix as the rules see it. A sheet of null: the product is not on the shelf. */
export type PlannedMix = {
  /** A letter, or one of the toner ids. */
  id: string
  product: string
  sheet: ProductSheet | null
  developerVolume: number
  ratio: MixRatio
  heatMin: number
  /** What the hair taken for this mix comes near. */
  near: { hairline: boolean; scalp: boolean; cushion: boolean }
  /** Some of its hair lies in the open air, where product dries. */
  isOpen?: boolean
  /** A weaker mix on the ends of a strand that it is on the roots of. */
  over?: { mix: string; volume: number } | undefined
}

/** A foil that would coat lightened hair, by its number and its mix: from where to where along the strand, mm from the scalp. */
export type PlannedTwice = { foil: number; piece?: Piece; mix: string; fromMm: number; toMm: number }

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
  | "trade-body"
  | "eyes"
  | "persulfates-at-work"
  | "asthma"
  | "dye-diffusion"
  | "heat-burns"
  | "product-sheet"

/** The field that answers a rule or a thing not asked, by the name it goes by on the screens. */
export type FieldName =
  | "age"
  | "scalp"
  | `question-${Question}`
  | "allergy"
  | "black-henna-date"
  | "patch-tests"
  | "strand-tests"
  | "history"
  | "stretch"
  | "porosity"
  | "regrowth"
  | "formula"
  | "timing"

/** One row: a stop holds the mix until it is answered, a caution only says. */
export type Rule = {
  severity: "stop" | "caution"
  decides: Decider
  /** Whether a reason in writing overrides it: what the colourist decides, and nothing else. */
  passable: boolean
  /** Whether a doctor's letter with its date answers it. */
  letter: boolean
  /** Whether it may be named on a sheet that hangs where others read it: what tells of health may not. */
  isPublic: boolean
  field: FieldName
  source: Source
  finds(visit: Visit): readonly Found[]
}
/** `about` is what an override of it holds for: once that is another, it is to be overridden again. */
export type Found = { why: CautionCode; mixes?: readonly string[]; about?: string }

type Row = Omit<Rule, "severity" | "passable" | "letter">

export const stop = (row: Row & { letter?: true }): Rule => ({
  severity: "stop",
  passable: row.decides === "colourist",
  letter: false,
  ...row,
})
export const caution = (row: Row): Rule => ({ severity: "caution", passable: false, letter: false, ...row })

export const when = (isFound: boolean | undefined, why: CautionCode): readonly Found[] =>
  isFound ? [{ why }] : []

/** Whether any of these was answered with yes, on whichever day: a yes holds until it is answered anew. */
export const said = ({ consultation }: Visit, ...asked: readonly Question[]) =>
  asked.some((question) => consultation.answers[question]?.said === "yes")

/** A finding for each mix that gives a reason; mixes that give the same one share it. */
export function eachMix(
  { mixes }: Pick<Visit, "mixes">,
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
