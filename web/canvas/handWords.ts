import type { Head } from "../../geometry/head/head"
import { draftStore } from "../plan/draftStore"
import { directionText, hairlineWords } from "../plan/words"
import type { PaneState } from "./drawPane"
import type { Pointer } from "./tools/tool"

/** What is said beside the hand: where it is by the hairline, and while a parting is drawn how that runs. */
export function handWords({ at }: Pointer, { head }: PaneState): readonly string[] {
  if (!at) return []
  const [behind, along] = hairlineWords(at, head)
  return [behind, drawnWords(head) ?? along]
}

function drawnWords(head: Head): string | null {
  const { draft } = draftStore.getState()
  const drawn = draft?.changed[0]
  if (!draft) return null
  return draft.refused ?? draft.hint?.words ?? (drawn ? directionText(drawn, head) : null)
}
