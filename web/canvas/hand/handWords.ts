import type { Head } from "../../../geometry/scalp/head"
import { directionIn, hairlinePointOf } from "../../core/placement/places"
import { draftStore } from "../../session/draftStore"
import { words } from "../../session/words"
import type { PaneState } from "../paint/paneState"
import type { Pointer } from "../tools/tool"

/** What is said beside the hand: where it is by the hairline, and while a parting is drawn how that runs. */
export function handWords({ at }: Pointer, { head }: PaneState): readonly string[] {
  if (!at) return []
  const { behind, along } = words().common.hairlinePoint
  const point = hairlinePointOf(at, head)
  return [behind(point), drawnWords(head) ?? along(point)]
}

function drawnWords(head: Head): string | null {
  const { draft } = draftStore.getState()
  if (!draft) return null
  if (draft.refused) return draft.refused
  const { common, placement } = words()
  if (draft.hint) return placement.map.snapped(draft.hint)
  const [drawn] = draft.changed
  return drawn ? common.direction(directionIn(drawn, head)) : null
}
