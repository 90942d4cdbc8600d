import { useState } from "react"
import type { Technique } from "../../../../presets/techniques/technique"
import { counts } from "../../../core/document/limits"
import { newId } from "../../../core/document/newId"
import type { Plan } from "../../../core/document/schema"
import { headOf } from "../../../core/figures/measured"
import { captureSections } from "../../../core/technique/captureTechnique"
import { draftSteps } from "../../../core/text/draftSteps"
import { countText } from "../../../core/text/figureText"
import { usePlan, useSession } from "../../../session/usePlan"
import { Modal } from "../../fields/Modal"
import { TechniqueForm } from "./TechniqueForm"

/** The selected sections, or all when none is, saved as a technique for other heads. */
export function SaveSelection() {
  const plan = usePlan((open) => open)
  const selectedIds = useSession((session) => session.selectedIds)
  const [draft, setDraft] = useState<Technique | null>(null)
  const selected = plan.sections.filter(({ id }) => selectedIds.includes(id))
  const sections = selected.length > 0 ? selected : plan.sections
  const leave = () => setDraft(null)
  return (
    <>
      <button type="button" className="button" onClick={() => setDraft(techniqueFrom(sections, plan))}>
        Save {selected.length > 0 ? countText(selected.length, "selected section") : "all sections"} as a
        technique…
      </button>
      {draft && (
        <Modal
          title={`A technique of ${countText(draft.sections.length, "section")}`}
          wide
          writing
          onClose={leave}
        >
          <TechniqueForm technique={draft} onLeave={leave} />
        </Modal>
      )}
    </>
  )
}

const techniqueFrom = (sections: Plan["sections"], plan: Plan): Technique => ({
  id: newId(),
  name: "",
  aim: "",
  notes: "",
  steps: draftSteps(sections, headOf(plan)).slice(0, counts.steps.high),
  sections: captureSections(sections, headOf(plan)),
})
