import type { ReactNode } from "react"
import { useStore } from "zustand"
import { landmarkNames } from "../../../geometry/head/hairlineLandmarks"
import { isOnMidline, type LandmarkMove } from "../../../geometry/head/landmarkMoves"
import { act } from "../../plan/act"
import { capital } from "../../plan/capital"
import { restoreLandmarks } from "../../plan/edits/moveLandmark"
import { movesOf } from "../../plan/hairlineMoves"
import { hairlineStore, sidesInHand } from "../../plan/hairlineStore"
import { landmarkTitle } from "../../plan/hairlineWords"
import { limits } from "../../plan/limits"
import { usePlan } from "../../plan/usePlan"
import { Choices } from "../Choices"
import { NumberField } from "../NumberField"
import { changeLandmark } from "./landmarkHand"
import "./hairline.css"

const landmarks = landmarkNames.map((value) => ({ value, label: capital(value) }))
const asForm: LandmarkMove = { towardNapeMm: 0, behindMm: 0 }

/** Where a client's hairline departs from its form, one landmark at a time, in millimetres. */
export function LandmarkFields({ children }: { children?: ReactNode }) {
  const hairline = usePlan((plan) => plan.head.hairline)
  const { selected, together } = useStore(hairlineStore)
  const { name, side } = selected
  const sides = sidesInHand(selected, together)
  const move = movesOf(hairline)[side].get(name) ?? asForm
  const change = (part: Partial<LandmarkMove>) => changeLandmark(selected, { ...move, ...part })
  return (
    <div className="landmarks">
      <Choices
        legend="Where hers differs"
        options={landmarks}
        value={name}
        onChange={(value) => hairlineStore.setState({ selected: { name: value, side } })}
      />
      {children}
      <p className="landmark-title">{capital(landmarkTitle(selected, sides))}</p>
      <div className="landmark-fields">
        <NumberField
          name="Into the hair"
          unit="mm"
          value={move.behindMm}
          range={limits.landmarkMm}
          onCommit={(behindMm) => change({ behindMm })}
        />
        {!isOnMidline(name) && (
          <NumberField
            name="Toward the nape"
            unit="mm"
            value={move.towardNapeMm}
            range={limits.landmarkMm}
            onCommit={(towardNapeMm) => change({ towardNapeMm })}
          />
        )}
      </div>
      <div className="ways-back">
        <button
          className="button"
          type="button"
          disabled={move === asForm}
          onClick={() =>
            act(`Put ${landmarkTitle(selected, sides)} back as the form`, restoreLandmarks([name], sides))
          }
        >
          As the form
        </button>
        <button
          className="button"
          type="button"
          disabled={!hairline.moves}
          onClick={() => act("Put the hairline back as the form", restoreLandmarks())}
        >
          All as the form
        </button>
      </div>
    </div>
  )
}
