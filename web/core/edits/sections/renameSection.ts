import { isFoil } from "../../../../geometry/section/section"
import type { Edit } from "../../document/edit"
import { replaceEach } from "./replaceSections"

/** Calls a section by another name; no name at all leaves a foil its number. */
export const renameSection = (id: string, name: string): Edit =>
  replaceEach([id], (section) =>
    isFoil(section) ? { ...section, name: name.trim() || undefined } : { ...section, name: name.trim() },
  )
