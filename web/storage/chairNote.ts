import { isLiveService, type LiveService } from "../core/chair/liveService"
import type { KeptService } from "./shelfDatabase"

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

/** A service that was still being written when its page went away. */
export function noted(planId: string): { rev: string; value: LiveService } | null {
  const service = read(planId)
  return service && isLiveService(service.value) ? { rev: service.rev, value: service.value } : null
}

function read(planId: string): KeptService | null {
  try {
    return JSON.parse(localStorage.getItem(nameOf(planId)) ?? "null")
  } catch {
    return null
  }
}
