import type { Chair } from "../core/chair/chair"
import type { LiveService } from "../core/chair/liveService"

/** What goes on by itself between two writings of a service, and the name of the writing it goes on from. */
type ChairTime = Pick<Chair, "elapsedMs" | "last" | "clockNotes"> & { rev: string }

const nameOf = (planId: string) => `partline-chair-time-${planId}`

/** Notes how far the clock has come: between two taps nothing else changes, and the whole service is much to write. */
export function noteTime({ planId, chair: { elapsedMs, last, clockNotes } }: LiveService, rev: string) {
  const time: ChairTime = { rev, elapsedMs, last, clockNotes }
  try {
    localStorage.setItem(nameOf(planId), JSON.stringify(time))
  } catch {
    // No room: the wall clock has to bear witness from the last tap on.
  }
}

export function forgetTime(planId: string) {
  try {
    localStorage.removeItem(nameOf(planId))
  } catch {}
}

/** A service as it was written, gone on to what was noted of its time since. */
export function withNotedTime(live: LiveService, rev: string): LiveService {
  const noted = read(live.planId)
  if (noted?.rev !== rev) return live
  const { elapsedMs, last, clockNotes } = noted
  return { ...live, chair: { ...live.chair, elapsedMs, last, clockNotes } }
}

/** Whether the clock still goes on from that writing: nothing else has been written since. */
export const goesOnFrom = (planId: string, rev: string) => read(planId)?.rev === rev

function read(planId: string): ChairTime | null {
  try {
    return JSON.parse(localStorage.getItem(nameOf(planId)) ?? "null")
  } catch {
    return null
  }
}
