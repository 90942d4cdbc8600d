import type { Section } from "../../../../geometry/section/section"
import { sectionNameOf } from "../../../core/document/sectionNameCode"
import {
  letCross,
  splitAtWorkingPartings,
  trimToWorkingSection,
} from "../../../core/edits/working/trimToWorkingSection"
import { commit } from "../../../session/commit"
import { useWords } from "../../../session/words"

const edits = {
  trim: ["trim-to-section", trimToWorkingSection],
  split: ["split-at-line", splitAtWorkingPartings],
  letCross: ["let-cross", letCross],
} as const
const fixes = ["trim", "split", "letCross"] as const

/** What can be done about sections that cross a section line: cut them there, cut them in two, or let them be. */
export function CrossingFixes({ sections }: { sections: readonly Section[] }) {
  const w = useWords().placement.working
  const ids = sections.map(({ id }) => id)
  const names = sections.map(sectionNameOf)
  const [only, ...others] = names
  const isOne = others.length === 0
  return (
    <div className="actions">
      {fixes.map((fix) => {
        const [code, edit] = edits[fix]
        return (
          <button
            type="button"
            className="button"
            key={fix}
            aria-label={isOne ? w.fixesOf[fix](only) : undefined}
            onClick={() => commit({ chapter: "placement", code, sections: names }, edit(ids))}
          >
            {isOne ? w.fixes[fix].one : w.fixes[fix].all(sections.length)}
          </button>
        )
      })}
    </div>
  )
}
