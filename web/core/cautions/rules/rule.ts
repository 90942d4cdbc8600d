import type { ProductSheet } from "../../../../presets/formula/productSheet"
import type { Consultation } from "../../document/consultation"
import type { MixRatio } from "../../mixing/strength"
import type { Now } from "./alertTest"

/** Everything the rules look at: the client, what is to be mixed, and when. */
export type Visit = { consultation: Consultation; mixes: readonly PlannedMix[]; now: Now }

/** A mix as the rules see it. A sheet of null: the product is not on the shelf. */
export type PlannedMix = {
  id: string
  /** As it is called in a sentence: "Mix A", "The toner". */
  name: string
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

export type Decider =
  | "the law and the label"
  | "the maker’s directions"
  | "the client’s doctor"
  | "the colourist"

/** One row: a stop holds the mix until it is answered, a caution only says. `why` is one sentence with the cure. */
export type Rule = {
  rule: string
  severity: "stop" | "caution"
  /** Whether a written reason may pass it. */
  passable: boolean
  decides: Decider
  source: string
  finds(visit: Visit): readonly Found[]
}
/** `about` is what a pass of it holds for: once that is another, it is to be passed again. */
export type Found = { why: string; mixes?: readonly string[]; about?: string }

export const stop = (row: Omit<Rule, "severity" | "passable">): Rule => ({
  severity: "stop",
  passable: true,
  ...row,
})
export const finalStop = (row: Omit<Rule, "severity" | "passable">): Rule => ({
  severity: "stop",
  passable: false,
  ...row,
})
export const caution = (row: Omit<Rule, "severity" | "passable">): Rule => ({
  severity: "caution",
  passable: true,
  ...row,
})

export const when = (isFound: boolean | undefined, why: string): readonly Found[] =>
  isFound ? [{ why }] : []

/** A finding for each mix that gives a reason; mixes that give the same one share it. */
export function eachMix(
  { mixes }: Visit,
  whyOf: (mix: PlannedMix) => string | null,
  aboutOf: (mix: PlannedMix) => string = ({ product }) => product,
): readonly Found[] {
  const found = mixes.flatMap((mix) => {
    const why = whyOf(mix)
    return why === null ? [] : [{ why, mixes: [mix.id], about: aboutOf(mix) }]
  })
  return [...new Set(found.map(({ why }) => why))].map((why) => {
    const own = found.filter((each) => each.why === why)
    return { ...own[0], mixes: own.flatMap((each) => each.mixes) }
  })
}
