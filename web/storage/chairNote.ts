import { type LiveService, liveServiceOf } from "../core/chair/liveService"
import type { KeptService } from "./records"

/**
 * What is being written of a chair, noted down at once: a page that goes away in the moment of a tap may take the
 * write to its database along. It is there only until that write is known to be done.
 */
const nameOf = (planId: string) => `partline-chair-${planId}`

export function note(service: KeptService) {
  try {
    localStorage.setItem(nameOf(service.planId), JSON.stringify(service))
  } catch {
    // No room, or no such storage here: the database alone has to do.
    forget(service)
  }
}

export function forget({ planId, rev }: Pick<KeptService, "planId" | "rev">) {
  try {
    if (read(planId)?.rev === rev) localStorage.removeItem(nameOf(planId))
  } catch {}
}

/** Nothing of a plan's service stays noted down, whatever was being written. */
export function forgetNote(planId: string) {
  try {
    localStorage.removeItem(nameOf(planId))
  } catch {}
}

/** A service that was still being written when its page went away. */
export function noted(planId: string): { rev: string; value: LiveService } | null {
  const service = read(planId)
  const value = service && liveServiceOf(service.value)
  return value ? { rev: service.rev, value } : null
}

type Found = { rev: string; value: LiveService }

/** What was noted or what is in the database, whichever the chair got to last: a note may be left of a writing long overtaken. */
export function laterOf(note: Found | null, kept: Found | null): Found | null {
  if (!note || !kept) return note ?? kept
  const [a, b] = [note.value, kept.value]
  if (a.startedAt !== b.startedAt) return Date.parse(a.startedAt) > Date.parse(b.startedAt) ? note : kept
  if (a.chair.revision !== b.chair.revision) return a.chair.revision > b.chair.revision ? note : kept
  if ((a.endedAt === null) !== (b.endedAt === null)) return a.endedAt === null ? kept : note
  return a.chair.elapsedMs >= b.chair.elapsedMs ? note : kept
}

function read(planId: string): KeptService | null {
  try {
    return JSON.parse(localStorage.getItem(nameOf(planId)) ?? "null")
  } catch {
    return null
  }
}
