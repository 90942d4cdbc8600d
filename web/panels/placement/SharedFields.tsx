import { type Foil, isFoil, type Section } from "../../../geometry/section/section"
import { type RootWord, sliceDepthMm, stitches } from "../../../presets/placement/foils"
import type { Plan } from "../../core/document/schema"
import { changeSections } from "../../core/edits/sections/changeSections"
import { replaceSections } from "../../core/edits/sections/replaceSections"
import { figuresOf } from "../../core/figures/measured"
import { traitsOf } from "../../core/kinds/kindRecords"
import { commit } from "../../session/commit"
import { useWords } from "../../session/words"
import { Choices } from "../fields/Choices"
import {
  depthOptions,
  depthWordOf,
  rootOptions,
  rootPatch,
  rootWordOf,
  stitchOptions,
  stitchWordOf,
} from "./sectionChoices"

type Props = { sections: readonly Section[]; plan: Plan }

/** What several sections have in common, set for all of them at once; nothing is inked where they differ. */
export function SharedFields({ sections, plan }: Props) {
  const { placement } = useWords()
  const w = placement.editor
  const ids = sections.map(({ id }) => id)
  const foils = sections.filter(isFoil)
  const isBegunByWord = foils.some((foil) => !isOwnStrand(foil))
  return (
    <>
      <Choices
        legend={w.depthOfAll}
        options={depthOptions(placement)}
        value={shared(sections, ({ depthMm: { start, end } }) => (start === end ? depthWordOf(start) : null))}
        onChange={(word) => {
          const mm = sliceDepthMm[word].value
          const depthMm = { start: mm, end: mm }
          commit({ chapter: "placement", code: "set-depth" }, changeSections(ids, { band: { depthMm } }))
        }}
      />
      <SharedStitch sections={sections} />
      {foils.length > 0 && (
        <>
          {isBegunByWord && (
            <Choices
              legend={w.productStarts}
              options={rootOptions(placement)}
              value={shared(foils, rootWordOf)}
              onChange={(word) =>
                commit({ chapter: "placement", code: "set-start" }, startAll(foils, word, plan))
              }
            />
          )}
          <Choices
            legend={w.mix}
            options={plan.mixes.map(({ id }) => ({ value: id, label: id }))}
            value={shared(foils, ({ mix }) => mix)}
            onChange={(mix) =>
              commit(
                { chapter: "placement", code: "use-mix", mix },
                changeSections(ids, { treatment: { mix } }),
              )
            }
          />
        </>
      )}
    </>
  )
}

function SharedStitch({ sections }: Pick<Props, "sections">) {
  const { placement } = useWords()
  const stitched = sections.filter((section) => "stitchMm" in section)
  if (stitched.length < sections.length) return null
  return (
    <Choices
      legend={placement.editor.stitch}
      options={stitchOptions(placement)}
      value={shared(stitched, stitchWordOf)}
      onChange={(word) => {
        const { stitchMm, gapMm } = stitches[word]
        commit(
          { chapter: "placement", code: "set-stitch" },
          changeSections(
            stitched.map(({ id }) => id),
            { stitching: { stitchMm: stitchMm.value, gapMm: gapMm.value } },
          ),
        )
      }}
    />
  )
}

/** The value that all have; null where they differ. */
function shared<Each, Value>(all: readonly Each[], read: (each: Each) => Value | null): Value | null {
  const [first, ...others] = all.map(read)
  return others.every((value) => value === first) ? first : null
}

/** Product starts at a word on every foil; how much of the strand that is goes by the length of each one's hair. */
const startAll = (foils: readonly Foil[], word: RootWord, plan: Plan) =>
  replaceSections(
    foils.map(({ id }) => id),
    (section) => (isFoil(section) ? { ...section, ...rootOf(section, word, plan) } : section),
  )

/** The kind says which part of the strand is coated: what is painted goes on from its own edge. */
const isOwnStrand = (foil: Foil) => traitsOf(foil).ownTreatment.includes("strand")

/** What has an edge of its own keeps it, however near the scalp product may come. */
function rootOf(
  foil: Foil,
  word: RootWord,
  plan: Plan,
): Pick<Foil, "rootDistanceMm"> & Partial<Pick<Foil, "strand">> {
  const { rootDistanceMm, strand } = rootPatch(word, figuresOf(foil, plan).lengthCm)
  return isOwnStrand(foil) ? { rootDistanceMm } : { rootDistanceMm, strand }
}
