import { useEffect } from "react"
import { useStore } from "zustand"
import { readTechniques, techniqueStore } from "../../../session/techniqueShelf"

/** The salon's own techniques, read when a panel that shows them comes to the screen. */
export function useTechniques() {
  useEffect(() => void readTechniques(), [])
  return useStore(techniqueStore)
}
