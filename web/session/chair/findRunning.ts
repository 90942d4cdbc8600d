import { chairHabits } from "../../../presets/chair/emergencies"
import { liveServiceOf } from "../../core/chair/liveService"
import { browserShelf } from "../../storage/browserShelf"
import { listRunning } from "../../storage/shelfServices"

/** The plan of a service that goes on: the one on the screen first; one left running long ago was forgotten. */
export async function findRunning(shownId: string, nowMs: number): Promise<string | null> {
  const running = await listRunning(browserShelf).catch(() => [])
  const found = running
    .map(({ value }) => liveServiceOf(value))
    .filter((live) => live !== null)
    .filter(({ planId, chair }) => planId === shownId || nowMs - chair.last.wallMs < forgottenMs)
    .sort((a, b) => b.chair.last.wallMs - a.chair.last.wallMs)
  return (found.find(({ planId }) => planId === shownId) ?? found[0])?.planId ?? null
}

const forgottenMs = chairHabits.forgottenAfterHours * 3_600_000
