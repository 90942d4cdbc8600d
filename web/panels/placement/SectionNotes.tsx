import { sectionNotes } from "../../core/checks/sectionNotes"
import { sectionNameOf } from "../../core/document/sectionNameCode"
import { cureNote } from "../../core/edits/sections/cureNote"
import { commit } from "../../session/commit"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"

const cureDone = { "deep-slice": "set-depth", bare: "set-start", "bare-coat": "set-roots-mix" } as const

/** What a colourist would want to know of the sections drawn, each with its cure. */
export function SectionNotes() {
  const w = useWords().placement.list.notes
  const plan = usePlan((open) => open)
  const noted = sectionNotes(plan.sections, plan)
  if (noted.length === 0) return null
  return (
    <section aria-labelledby="notes-title">
      <h2 id="notes-title">{w.title}</h2>
      <ul className="overlaps">
        {noted.map((each) => (
          <li key={`${each.section.id} ${each.note.code}`}>
            <p>{w.told({ ...each.note, section: sectionNameOf(each.section) })}</p>
            <button
              type="button"
              className="button"
              onClick={() => commit({ chapter: "placement", code: cureDone[each.note.code] }, cureNote(each))}
            >
              {w.cure(each.note.code)}
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}
