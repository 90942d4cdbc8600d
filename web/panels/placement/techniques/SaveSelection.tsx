import { useState } from "react"
import type { Technique } from "../../../../presets/techniques/technique"
import { newId } from "../../../core/document/newId"
import type { Plan } from "../../../core/document/schema"
import { counts } from "../../../core/fields/limits"
import { headOf } from "../../../core/figures/measured"
import { draftStepsOf } from "../../../core/placement/draftStep"
import { captureSections } from "../../../core/technique/captureTechnique"
import { usePlan, useSession } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import type { TechniquesWords } from "../../../words/en/techniques/techniques"
import { Modal } from "../../fields/Modal"
import { TechniqueForm } from "./TechniqueForm"

/** All sections saved as a technique for other heads; or, where some are in hand, these alone. */
export function SaveSelection() {
  const w = useWords().techniques
  const plan = usePlan((open) => open)
  const selectedIds = useSession((session) => session.selectedIds)
  const [draft, setDraft] = useState<Technique | null>(null)
  const selected = plan.sections.filter(({ id }) => selectedIds.includes(id))
  const isPart = selected.length > 0 && selected.length < plan.sections.length
  const leave = () => setDraft(null)
  return (
    <>
      <div className="actions">
        <button
          type="button"
          className="button"
          onClick={() => setDraft(techniqueFrom(plan.sections, plan, w))}
        >
          {w.own.save(0)}
        </button>
        {/* After a mirror one half is in hand: the whole stands first. */}
        {isPart && (
          <button type="button" className="button" onClick={() => setDraft(techniqueFrom(selected, plan, w))}>
            {w.own.save(selected.length)}
          </button>
        )}
      </div>
      {draft && (
        <Modal title={w.own.titleOf(draft.sections.length)} wide writing onClose={leave}>
          <TechniqueForm technique={draft} onLeave={leave} />
        </Modal>
      )}
    </>
  )
}

const techniqueFrom = (sections: Plan["sections"], plan: Plan, { draft }: TechniquesWords): Technique => ({
  id: newId(),
  name: "",
  aim: "",
  notes: "",
  steps: draftStepsOf(sections, headOf(plan)).slice(0, counts.steps.high).map(draft),
  sections: captureSections(sections, headOf(plan)),
})
