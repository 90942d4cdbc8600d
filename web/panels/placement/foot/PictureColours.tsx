import { useStore } from "zustand"
import { levelsEitherWay } from "../../../../presets/pigment/pigmentByLevel"
import { hexOf } from "../../../core/pigment/screenColour"
import { shadesOfPlan } from "../../../core/pigment/shadesOfPlan"
import { pictureStore } from "../../../session/fall/pictureStore"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"

/** What the picture is drawn in, its colour as a range, and what of it nobody has said. */
export function PictureColours() {
  const w = useWords().placement.foot.fall
  const consultation = usePlan((open) => open.consultation)
  const isToned = useStore(pictureStore, (look) => look.isToned)
  const { now, aimed, finish, assumed } = shadesOfPlan({ consultation })
  const toned = isToned ? finish : null
  const range = [-levelsEitherWay, 0, levelsEitherWay].map((off) =>
    hexOf({ kind: "lifted", level: aimed + off, toned }),
  )
  return (
    <p className="fall-colours">
      <span className="fall-range" role="img" aria-label={w.swatches}>
        {range.map((colour, place) => (
          <i key={["darker", "mid", "lighter"][place]} className="swatch" style={{ background: colour }} />
        ))}
      </span>
      {w.drawn({ now: now.hairline.midLengths, aimed, finish: toned })}
      {assumed.now !== null && ` ${w.nowAssumed(assumed.now)}`}
      {assumed.aimed !== null && ` ${w.aimedAssumed(assumed.aimed)}`}
    </p>
  )
}
