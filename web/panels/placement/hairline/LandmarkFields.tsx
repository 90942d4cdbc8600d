import type { ReactNode } from "react"
import { useStore } from "zustand"
import { isOnMidline, type LandmarkMove } from "../../../../geometry/scalp/landmarkMoves"
import { movesOf } from "../../../core/document/hairlineMoves"
import { restoreLandmarks } from "../../../core/edits/plan/moveLandmark"
import { limits } from "../../../core/fields/limits"
import { commit } from "../../../session/commit"
import { hairlineStore, sidesInHand } from "../../../session/hairlineStore"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
import { namedOptions } from "../../fields/options"
import { changeLandmark } from "./landmarkHand"
import "./hairline.css"

const asForm: LandmarkMove = { towardNapeMm: 0, behindMm: 0 }

/** Where a client's hairline departs from its form, one landmark at a time, in millimetres. */
export function LandmarkFields({ children }: { children?: ReactNode }) {
  const { common, placement } = useWords()
  const w = placement.hairline
  const hairline = usePlan((plan) => plan.head.hairline)
  const { selected, together } = useStore(hairlineStore)
  const { name, side } = selected
  const sides = sidesInHand(selected, together)
  const move = movesOf(hairline)[side].get(name) ?? asForm
  const change = (part: Partial<LandmarkMove>) => changeLandmark(selected, { ...move, ...part })
  return (
    <div className="landmarks">
      <Choices
        legend={w.differs}
        options={namedOptions(common.landmarks, common)}
        value={name}
        onChange={(value) => hairlineStore.setState({ selected: { name: value, side } })}
      />
      {children}
      <p className="landmark-title">{w.landmarkTitle(name, sides)}</p>
      <div className="landmark-fields">
        <NumberField
          name={w.intoHair}
          unit={common.units.mm}
          value={move.behindMm}
          range={limits.landmarkMm}
          onCommit={(behindMm) => change({ behindMm })}
        />
        {!isOnMidline(name) && (
          <NumberField
            name={w.towardsNape}
            unit={common.units.mm}
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
            commit(
              { chapter: "placement", code: "reset-landmark", name, sides },
              restoreLandmarks([name], sides),
            )
          }
        >
          {w.resetPoint}
        </button>
        <button
          className="button"
          type="button"
          disabled={!hairline.moves}
          onClick={() => commit({ chapter: "placement", code: "reset-hairline" }, restoreLandmarks())}
        >
          {w.resetAll}
        </button>
      </div>
    </div>
  )
}
