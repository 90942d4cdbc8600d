import type { Chair } from "../../service/chairClock"
import type { LiveService } from "../../service/liveService"

/** What goes on by itself between two taps of a service. */
type ChairTime = Pick<LiveService, "startedAt"> &
  Pick<Chair, "revision" | "elapsedMs" | "last" | "clockNotes">

const nameOf = (planId: string) => `partline-chair-time-${planId}`

/** Notes how far the clock has come: between two taps nothing else changes, and the whole service is much to write. */
export function noteTime({ planId, startedAt, chair }: LiveService) {
  const { revision, elapsedMs, last, clockNotes } = chair
  const time: ChairTime = { startedAt, revision, elapsedMs, last, clockNotes }
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

/** A kept service, gone on to what was noted of its time since its last tap. */
export function withNotedTime(live: LiveService): LiveService {
  const { startedAt, ...time } = read(live.planId) ?? {}
  const isOfItsLastTap = startedAt === live.startedAt && time.revision === live.chair.revision
  return isOfItsLastTap ? { ...live, chair: { ...live.chair, ...time } } : live
}

function read(planId: string): Partial<ChairTime> | null {
  try {
    return JSON.parse(localStorage.getItem(nameOf(planId)) ?? "null")
  } catch {
    return null
  }
}
