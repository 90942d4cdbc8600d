import { useStore } from "zustand"
import type { Sides } from "../../../core/document/hairlineMoves"
import { hairlineStore } from "../../../session/hairlineStore"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { labelledOptions } from "../../fields/options"

/** Whether a landmark is moved on both sides alike, or on one alone. */
export function LandmarkSides() {
  const w = useWords().placement.hairline
  const { selected, together } = useStore(hairlineStore)
  const choose = (sides: Sides) =>
    hairlineStore.setState(
      sides === "both" ? { together: true } : { together: false, selected: { ...selected, side: sides } },
    )
  return (
    <Choices
      legend={w.move}
      options={labelledOptions(w.moveSides)}
      value={together ? "both" : selected.side}
      onChange={choose}
    />
  )
}
