import type { ReactNode } from "react"
import { useStore } from "zustand"
import { landmarkNames } from "../../../../geometry/scalp/hairlineLandmarks"
import { isOnMidline, type LandmarkMove } from "../../../../geometry/scalp/landmarkMoves"
import { movesOf } from "../../../core/document/hairlineMoves"
import { limits } from "../../../core/document/limits"
import { restoreLandmarks } from "../../../core/edits/plan/moveLandmark"
import { capital } from "../../../core/text/capital"
import { landmarkTitle } from "../../../core/text/hairlineWords"
import { commit } from "../../../session/commit"
import { hairlineStore, sidesInHand } from "../../../session/hairlineStore"
import { usePlan } from "../../../session/usePlan"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
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
            commit(`Put ${landmarkTitle(selected, sides)} back as the form`, restoreLandmarks([name], sides))
          }
        >
          As the form
        </button>
        <button
          className="button"
          type="button"
          disabled={!hairline.moves}
          onClick={() => commit("Put the hairline back as the form", restoreLandmarks())}
        >
          All as the form
        </button>
      </div>
    </div>
  )
}
