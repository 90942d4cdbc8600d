import { useEffect } from "react"
import { useStore } from "zustand"
import { fieldId, fieldWanted } from "../../session/clearance/fieldWanted"

/** Shows the field that was asked for, and gives it the keys; once it stands on the page. */
export function useFieldWanted() {
  const field = useStore(fieldWanted, (wanted) => wanted.field)
  useEffect(() => {
    if (field === null) return
    const place = document.getElementById(fieldId(field))
    if (!place) return
    place.scrollIntoView({ block: "center" })
    const first = place.querySelector<HTMLElement>("input:checked, input, select, button")
    first?.focus({ preventScroll: true })
    fieldWanted.setState({ field: null })
  }, [field])
}
