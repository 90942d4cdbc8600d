import { useState } from "react"
import { fitParting } from "../../../geometry/placing/technique"
import { type LandmarkName, landmarkNames } from "../../../geometry/scalp/hairlineLandmarks"
import type { SectionKind } from "../../../geometry/section/section"
import { newSection } from "../../core/document/newSection"
import { addSections } from "../../core/edits/sections/addSections"
import { headOf } from "../../core/figures/measured"
import { capital } from "../../core/text/capital"
import { kindWords } from "../../core/text/words"
import { announceRefusal } from "../../session/announcements"
import { commit } from "../../session/commit"
import { planStore } from "../../session/planStore"
import { sessionStore } from "../../session/sessionStore"
import { Choices } from "../fields/Choices"
import { NumberField } from "../fields/NumberField"

const placeOptions = landmarkNames.map((value) => ({ value, label: capital(value) }))
const sides = [
  { value: "left", label: "Client’s left" },
  { value: "right", label: "Client’s right" },
] as const
const kinds = (Object.keys(kindWords) as SectionKind[]).map((value) => ({ value, label: kindWords[value] }))

/** Drawing without a pointer: a section along the hairline from one landmark to another, keeping its distance or drifting. */
export function AddByWords() {
  const [kind, setKind] = useState<SectionKind>("slice")
  const [side, setSide] = useState<"left" | "right">("left")
  const [from, setFrom] = useState<LandmarkName>("recession")
  const [to, setTo] = useState<LandmarkName>("temple")
  const [behindMm, setBehindMm] = useState(6)
  const [driftMm, setDriftMm] = useState(0)
  return (
    <details>
      <summary>Add by words</summary>
      <form
        className="editor"
        onSubmit={(event) => {
          event.preventDefault()
          addAlongHairline(kind, { side, from, to, behindMm, driftMm })
        }}
      >
        <Choices legend="What" options={kinds} value={kind} onChange={setKind} />
        <Choices legend="Side" options={sides} value={side} onChange={setSide} />
        <div className="pairs">
          <PlaceField name="From" value={from} onChange={setFrom} />
          <PlaceField name="To" value={to} onChange={setTo} />
        </div>
        <div className="pairs">
          <NumberField
            name="Behind the hairline where it starts"
            unit="mm"
            value={behindMm}
            range={reachMm}
            onCommit={setBehindMm}
          />
          <NumberField
            name="Farther back where it ends, by"
            unit="mm"
            value={driftMm}
            range={driftsMm}
            onCommit={setDriftMm}
          />
        </div>
        <button type="submit" className="button strong">
          Add {kindWords[kind].toLowerCase()}
        </button>
      </form>
    </details>
  )
}

const reachMm = { low: 1, high: 90 }
/** How much farther behind the hairline a section ends than it starts, mm; it comes nearer when negative. */
const driftsMm = { low: -80, high: 80 }

type Place = {
  side: "left" | "right"
  from: LandmarkName
  to: LandmarkName
  behindMm: number
  driftMm: number
}

function addAlongHairline(kind: SectionKind, { side, from, to, behindMm, driftMm }: Place) {
  const plan = planStore.getState().present
  const counted = (name: LandmarkName) => landmarkNames.indexOf(name) * (side === "left" ? -1 : 1)
  const made = fitParting(headOf(plan), {
    run: driftMm === 0 ? "parallel" : "drifting",
    from: { landmark: counted(from), behindMm },
    to: { landmark: counted(to), behindMm: Math.max(reachMm.low, behindMm + driftMm) },
  })
  if ("refused" in made) announceRefusal("Choose two different places, further from each other.")
  else
    commit(
      `Add a ${kindWords[kind].toLowerCase()}, ${side} ${from} to ${to}`,
      addSections(newSection(kind, made.parting, plan, sessionStore.getState().next)),
    )
}

type PlaceFieldProps = { name: string; value: LandmarkName; onChange: (value: LandmarkName) => void }

function PlaceField({ name, value, onChange }: PlaceFieldProps) {
  return (
    <label className="field">
      <span className="name">{name}</span>
      <select value={value} onChange={(event) => onChange(placeOptions[event.target.selectedIndex].value)}>
        {placeOptions.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </label>
  )
}
