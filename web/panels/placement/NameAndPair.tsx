import type { Section } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import { sectionNameOf } from "../../core/document/sectionNameCode"
import { renameSection } from "../../core/edits/sections/renameSection"
import { foilsBeside, splitSection } from "../../core/edits/sections/splitSection"
import { letters } from "../../core/fields/limits"
import { pairOf } from "../../core/placement/pairCode"
import { commit } from "../../session/commit"
import { breakSelectedPairs } from "../../session/selected"
import { useWords } from "../../session/words"
import { TextField } from "../fields/TextField"

type Props = { section: Section; plan: Plan }

/** Which section it makes a pair with, and whether its foil is wide enough. */
export const PairAndWidth = (props: Props) => (
  <>
    <PairNote {...props} />
    <SplitNote {...props} />
  </>
)

/** What a section is called. */
export function NameField({ section }: Pick<Props, "section">) {
  const w = useWords().placement.editor
  return (
    <TextField
      name={w.name}
      value={section.name ?? ""}
      most={letters.name}
      onCommit={(name) =>
        commit(
          { chapter: "placement", code: "rename", section: sectionNameOf(section) },
          renameSection(section.id, name),
        )
      }
    />
  )
}

function PairNote({ section, plan }: Props) {
  const w = useWords().placement.editor
  const pair = pairOf(section, plan)
  if (!pair) return null
  return (
    <div className="note-with-button">
      <p>{w.pair(pair)}</p>
      <button type="button" className="button" onClick={breakSelectedPairs}>
        {w.breakPair}
      </button>
    </div>
  )
}

function SplitNote({ section, plan }: Props) {
  const w = useWords().placement.editor
  const count = foilsBeside(section, plan)
  if (count < 2) return null
  return (
    <div className="note-with-button">
      <p>{w.wide(count)}</p>
      <button
        type="button"
        className="button"
        onClick={() =>
          commit(
            { chapter: "placement", code: "split", section: sectionNameOf(section) },
            splitSection(section.id),
          )
        }
      >
        {w.split(count)}
      </button>
    </div>
  )
}
