import type { Section } from "../../../geometry/section/section"
import { letters } from "../../core/document/limits"
import type { Plan } from "../../core/document/schema"
import { renameSection } from "../../core/edits/sections/renameSection"
import { foilsBeside, splitSection } from "../../core/edits/sections/splitSection"
import { capital } from "../../core/text/capital"
import { sectionName } from "../../core/text/sectionName"
import { pairWords } from "../../core/text/words"
import { commit } from "../../session/commit"
import { breakSelectedPairs } from "../../session/selected"
import { TextField } from "../fields/TextField"

type Props = { section: Section; plan: Plan }

/** What a section is called, which one it makes a pair with, and whether its foil is wide enough. */
export function NameAndPair({ section, plan }: Props) {
  return (
    <>
      <PairNote section={section} plan={plan} />
      <SplitNote section={section} plan={plan} />
      <TextField
        name="Name"
        value={section.name ?? ""}
        most={letters.name}
        onCommit={(name) => commit(`Rename ${sectionName(section)}`, renameSection(section.id, name))}
      />
    </>
  )
}

function PairNote({ section, plan }: Props) {
  const words = pairWords(section, plan)
  if (!words) return null
  return (
    <div className="note-with-button">
      <p>{capital(words)}: what is done to one is done to both.</p>
      <button type="button" className="button" onClick={breakSelectedPairs}>
        Break the pair
      </button>
    </div>
  )
}

function SplitNote({ section, plan }: Props) {
  const count = foilsBeside(section, plan)
  if (count < 2) return null
  return (
    <div className="note-with-button">
      <p>Wider than its foil: {count} foils side by side.</p>
      <button
        type="button"
        className="button"
        onClick={() => commit(`Split ${sectionName(section)} into foils`, splitSection(section.id))}
      >
        Split into {count} foils
      </button>
    </div>
  )
}
