import type { Chair } from "../../core/chair/chair"
import type { ChairSaid } from "../../core/chair/chairClock"
import type { ClockNote, TapNote } from "../../core/document/serviceRecord"
import { pieceOf } from "../../core/kinds/kindRecords"
import type { ChairWords } from "../../words/en/chair/chair"
import type { OfPieces } from "../../words/pieceWords"
import { say } from "../../words/say"

/** What the clock had to say, and what this window had to. */
export type Said = ChairSaid | { code: "held-in-another-window" } | { code: "second-tap" }

/** What was said, in the words of the screen; of a section by what it is called, of all by what the service has. */
export const chairSaid = (what: readonly Said[], words: ChairWords, foils: Chair["foils"]): string =>
  what.map((each) => sentence({ ...each, piece: pieceOf(toldOf(each, foils)) }, words)).join(" ")

const toldOf = (said: Said, foils: Chair["foils"]) =>
  "foil" in said ? foils.filter(({ mapNumber }) => mapNumber === said.foil) : foils

function sentence(said: OfPieces<Said>, { clockNotes, notes, refusals }: ChairWords): string {
  if (said.code in clockNotes) return say(clockNotes, said as OfPieces<ClockNote>)
  if (said.code in notes) return say(notes, said as OfPieces<TapNote>)
  return say(refusals, said as Parameters<typeof say<RefusalCode>>[1])
}

type RefusalCode = OfPieces<Exclude<Said, ClockNote | TapNote>>
