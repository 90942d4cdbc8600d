import { useEffect } from "react"
import type { Section } from "../../../../geometry/section/section"
import type { Plan } from "../../../core/document/schema"
import { type Draft, draftStore } from "../../../session/draftStore"
import type { Done } from "../../../session/words"

/** Shows sections on the map as if they were drawn, until they change or this goes; a stroke in hand comes before them. */
export function usePreview(plan: Plan, label: Done, sections: readonly Section[]) {
  useEffect(() => {
    const draft: Draft = {
      label,
      plan: { ...plan, sections: [...plan.sections, ...sections] },
      changed: sections,
    }
    draftStore.setState({ draft })
    const again = draftStore.subscribe((now) => {
      if (now.draft === null) draftStore.setState({ draft })
    })
    return () => {
      again()
      draftStore.setState({ draft: null })
    }
  }, [plan, label, sections])
}
