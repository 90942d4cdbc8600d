import { createStore } from "zustand/vanilla"
import type { Section } from "../../geometry/section/section"
import { z } from "../core/fields/zod"
import { sectionSchema } from "../core/kinds/sectionSchema"

/** Sections that were copied, kept in the browser so that they can be pasted into any of its plans and windows. */

const key = "partline-copied-sections"
const copiedSchema = z.array(sectionSchema)

/** How many sections wait to be pasted. */
export const clipboard = createStore<{ count: number }>(() => ({ count: (readCopied() ?? []).length }))

/** False when the browser lets nothing be kept. */
export function writeCopied(sections: readonly Section[]): boolean {
  try {
    localStorage.setItem(key, JSON.stringify(sections))
  } catch {
    return false
  }
  clipboard.setState({ count: sections.length })
  return true
}

/** What was copied last, by this window or another; null when it is no list of sections. */
export function readCopied(): readonly Section[] | null {
  try {
    const parsed = copiedSchema.safeParse(JSON.parse(localStorage.getItem(key) ?? "[]"))
    return parsed.success ? parsed.data : null
  } catch {
    return null
  }
}

/** Hears of what another window copies. Returns how to stop listening. */
export function listenToClipboard(): () => void {
  const read = () => clipboard.setState({ count: (readCopied() ?? []).length })
  window.addEventListener("storage", read)
  return () => window.removeEventListener("storage", read)
}
