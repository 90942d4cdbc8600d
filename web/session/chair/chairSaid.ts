import type { ChairSaid } from "../../core/chair/chairClock"
import type { ClockNote, TapNote } from "../../core/document/serviceRecord"
import type { ChairWords } from "../../words/en/chair/chair"
import { say } from "../../words/say"

/** What the clock had to say, and what this window had to. */
export type Said = ChairSaid | { code: "held-in-another-window" } | { code: "second-tap" }

/** What was said, in the words of the screen. */
export const chairSaid = (what: readonly Said[], words: ChairWords): string =>
  what.map((said) => sentence(said, words)).join(" ")

function sentence(said: Said, { clockNotes, notes, refusals }: ChairWords): string {
  if (said.code in clockNotes) return say(clockNotes, said as ClockNote)
  if (said.code in notes) return say(notes, said as TapNote)
  return say(refusals, said as Parameters<typeof say<RefusalCode>>[1])
}

type RefusalCode = Exclude<Said, ClockNote | TapNote>
