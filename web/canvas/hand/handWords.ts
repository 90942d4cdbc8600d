import type { Head } from "../../../geometry/scalp/head"
import { directionText, hairlineWords } from "../../core/text/words"
import { draftStore } from "../../session/draftStore"
import type { PaneState } from "../paint/paneState"
import type { Pointer } from "../tools/tool"

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
