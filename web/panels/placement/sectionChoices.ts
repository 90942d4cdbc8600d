import type { Foil } from "../../../geometry/section/section"
import {
  type DepthWord,
  type RootWord,
  rootDistanceMm,
  type StitchWord,
  sliceDepthMm,
  stitches,
} from "../../../presets/placement/foils"
import { regrowthShare } from "../../core/placement/strandShare"
import type { PlacementWords } from "../../words/en/placement/placement"

/** What a section can be in the trade's words, each with its figure beside it, and the word for a figure. */

const keysOf = <Key extends string>(table: Record<Key, unknown>) => Object.keys(table) as Key[]

export const depthOptions = ({ editor }: PlacementWords) =>
  keysOf(sliceDepthMm).map((word) => ({
    value: word,
    label: editor.depth(word, sliceDepthMm[word].value),
  }))
export const depthWordOf = (depthMm: number): DepthWord | null =>
  keysOf(sliceDepthMm).find((word) => sliceDepthMm[word].value === depthMm) ?? null

export const stitchOptions = ({ editor }: PlacementWords) =>
  keysOf(stitches).map((word) => ({
    value: word,
    label: editor.stitchOf(word, stitches[word].stitchMm.value),
  }))
export const stitchWordOf = ({ stitchMm, gapMm }: { stitchMm: number; gapMm: number }): StitchWord | null =>
  keysOf(stitches).find(
    (word) => stitches[word].stitchMm.value === stitchMm && stitches[word].gapMm.value === gapMm,
  ) ?? null

export const rootOptions = ({ editor }: PlacementWords) =>
  keysOf(rootDistanceMm).map((word) => ({
    value: word,
    label: editor.root(word, rootDistanceMm[word].value),
  }))

/** What a root word means for hair of a length: where product begins, and which part of the strand it covers. */
export const rootPatch = (word: RootWord, lengthCm: number): Pick<Foil, "rootDistanceMm" | "strand"> => ({
  rootDistanceMm: rootDistanceMm[word].value,
  strand: { from: 0, to: word === "regrowth" ? regrowthShare(lengthCm) : 1 },
})

export const rootWordOf = ({ rootDistanceMm: distanceMm, strand }: Foil): RootWord | null => {
  if (strand.from === 0 && strand.to < 0.5) return "regrowth"
  if (strand.from !== 0 || strand.to !== 1) return null
  return (
    keysOf(rootDistanceMm).find((word) => word !== "regrowth" && rootDistanceMm[word].value === distanceMm) ??
    null
  )
}
