import { useStore } from "zustand"
import { wornFronts } from "../../../../geometry/strands/gather"
import { mostWeeksOn } from "../../../../presets/pigment/growth"
import { growthIn } from "../../../core/regrowth/growth"
import { pictureStore } from "../../../session/fall/pictureStore"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"

/** How the picture is looked at: weeks later, with toner or before it, and alone for the client. */
export function PictureControls() {
  const w = useWords().placement.foot.fall
  const { front, weeksOn, isToned } = useStore(pictureStore)
  const isFinishKnown = usePlan(({ consultation }) => (consultation?.finish ?? null) !== null)
  const words = w.weeksOn({ weeks: weeksOn, ...growthIn(weeksOn) })
  return (
    <div className="fall-look">
      <Choices
        legend={w.front}
        options={wornFronts.map((value) => ({ value, label: w.fronts[value] }))}
        value={front}
        onChange={(next) => pictureStore.setState({ front: next })}
      />
      <label className="fall-weeks">
        {w.weeks}
        <input
          type="range"
          min={0}
          max={mostWeeksOn}
          value={weeksOn}
          aria-valuetext={words}
          onChange={({ target }) => pictureStore.setState({ weeksOn: Number(target.value) })}
        />
        <span>{words}</span>
      </label>
      {isFinishKnown && (
        <label className="check">
          <input
            type="checkbox"
            checked={isToned}
            onChange={({ target }) => pictureStore.setState({ isToned: target.checked })}
          />
          {w.withToner}
        </label>
      )}
      <button type="button" className="button" onClick={() => pictureStore.setState({ isAlone: true })}>
        {w.showToClient}
      </button>
    </div>
  )
}
