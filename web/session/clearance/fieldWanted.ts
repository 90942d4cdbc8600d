import { createStore } from "zustand/vanilla"
import type { FieldName } from "../../core/cautions/rules/rule"
import { sessionStore } from "../sessionStore"

/** The field that somebody asked to be shown; its screen takes it up once it stands on the page. */
export const fieldWanted = createStore<{ field: FieldName | null }>(() => ({ field: null }))

/** Opens the screen of a field and has it shown there. */
export function goToField(field: FieldName) {
  sessionStore.setState({ screen: screenOf(field) })
  fieldWanted.setState({ field })
}

function screenOf(field: FieldName) {
  if (field === "regrowth") return "placement"
  return field === "formula" || field === "timing" ? field : "client"
}

/** What a field goes by on the page. */
export const fieldId = (field: FieldName) => `field-${field}`
