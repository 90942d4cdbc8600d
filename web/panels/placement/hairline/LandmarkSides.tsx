import { useStore } from "zustand"
import type { Sides } from "../../../core/document/hairlineMoves"
import { hairlineStore } from "../../../session/hairlineStore"
import { Choices } from "../../fields/Choices"

const options: readonly { value: Sides; label: string }[] = [
  { value: "both", label: "Both sides" },
  { value: "left", label: "Left only" },
  { value: "right", label: "Right only" },
]

/** Whether a landmark is moved on both sides alike, or on one alone. */
export function LandmarkSides() {
  const { selected, together } = useStore(hairlineStore)
  const choose = (sides: Sides) =>
    hairlineStore.setState(
      sides === "both" ? { together: true } : { together: false, selected: { ...selected, side: sides } },
    )
  return (
    <Choices legend="Move" options={options} value={together ? "both" : selected.side} onChange={choose} />
  )
}
