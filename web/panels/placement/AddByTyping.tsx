import { useState } from "react"
import { fitParting } from "../../../geometry/placing/technique"
import { type LandmarkName, landmarkNames } from "../../../geometry/scalp/hairlineLandmarks"
import type { SectionKind } from "../../../geometry/section/section"
import { newSection } from "../../core/document/newSection"
import { addSections } from "../../core/edits/sections/addSections"
import { headOf } from "../../core/figures/measured"
import { announceRefusal } from "../../session/announcements"
import { commit } from "../../session/commit"
import { planStore } from "../../session/planStore"
import { sessionStore } from "../../session/sessionStore"
import { useWords, words } from "../../session/words"
import { Choices } from "../fields/Choices"
import { NumberField } from "../fields/NumberField"
import { namedOptions } from "../fields/options"

/** Drawing without a pointer: a section along the hairline from one landmark to another, keeping its distance or drifting. */
export function AddByTyping() {
  const { common, placement } = useWords()
  const { typing } = placement.editor
  const [kind, setKind] = useState<SectionKind>("slice")
  const [side, setSide] = useState<"left" | "right">("left")
  const [from, setFrom] = useState<LandmarkName>("recession")
  const [to, setTo] = useState<LandmarkName>("temple")
  const [behindMm, setBehindMm] = useState(6)
  const [driftMm, setDriftMm] = useState(0)
  return (
    <details>
      <summary>{typing.title}</summary>
      <form
        className="editor"
        onSubmit={(event) => {
          event.preventDefault()
          addAlongHairline(kind, { side, from, to, behindMm, driftMm })
        }}
      >
        <Choices
          legend={typing.kind}
          options={namedOptions(common.kinds, common)}
          value={kind}
          onChange={setKind}
        />
        <Choices
          legend={typing.side}
          options={sides.map((value) => ({ value, label: common.figures.capital(common.clientSide[value]) }))}
          value={side}
          onChange={setSide}
        />
        <div className="pairs">
          <PlaceField name={typing.from} value={from} onChange={setFrom} />
          <PlaceField name={typing.to} value={to} onChange={setTo} />
        </div>
        <div className="pairs">
          <NumberField
            name={typing.startsBehind}
            unit={common.units.mm}
            value={behindMm}
            range={reachMm}
            onCommit={setBehindMm}
          />
          <NumberField
            name={typing.drift}
            unit={common.units.mm}
            value={driftMm}
            range={driftsMm}
            onCommit={setDriftMm}
          />
        </div>
        <button type="submit" className="button strong">
          {typing.add(kind)}
        </button>
      </form>
    </details>
  )
}

const sides = ["left", "right"] as const
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
  if ("refused" in made) announceRefusal(words().placement.editor.typing.refused)
  else
    commit(
      { chapter: "placement", code: "add-along-hairline", kind, side, from, to },
      addSections(newSection(kind, made.parting, plan, sessionStore.getState().next)),
    )
}

type PlaceFieldProps = { name: string; value: LandmarkName; onChange: (value: LandmarkName) => void }

function PlaceField({ name, value, onChange }: PlaceFieldProps) {
  const { common } = useWords()
  const options = namedOptions(common.landmarks, common)
  return (
    <label className="field">
      <span className="name">{name}</span>
      <select value={value} onChange={(event) => onChange(options[event.target.selectedIndex].value)}>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </label>
  )
}
