import { headOf } from "../../../core/figures/measured"
import { type PaperView, pictureOf } from "../../../drawing/headDrawing"
import { type Ink, inks } from "../../../drawing/inks"
import type { Mark } from "../../../drawing/mark"
import { wornMarks } from "../../../drawing/wornMarks"
import { sessionStore, takeTool } from "../../../session/sessionStore"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { pathData } from "../../fields/pathData"
import { HeadFigure } from "../../heads/HeadFigure"

const views: readonly PaperView[] = ["front", "left", "top"]

/** The head as the measures and the hairline make it, and the way to the map where it is shaped by hand. */
export function ClientHead() {
  const w = useWords().placement.hairline
  const head = usePlan((plan) => plan.head)
  const shape = () => {
    sessionStore.setState({ screen: "placement" })
    takeTool("hairline")
  }
  return (
    <section className="client-head" aria-labelledby="client-head">
      <h2 id="client-head">{w.head}</h2>
      <div className="client-views">
        {views.map((name) => {
          const picture = pictureOf(headOf({ head }), name)
          return (
            <HeadFigure key={name} name={name} picture={picture}>
              {wornMarks({ head }, picture.scene).map(
                (mark) => mark.kind === "line" && <WornLine key={pathData(mark.path)} {...mark} />,
              )}
            </HeadFigure>
          )
        })}
      </div>
      <button className="button" type="button" onClick={shape}>
        {w.shapeOnMap}
      </button>
    </section>
  )
}

function WornLine({ path, ink }: Extract<Mark, { kind: "line" }>) {
  const { color, dashPt }: Ink = inks[ink]
  return <path className="worn-line" d={pathData(path)} stroke={color} strokeDasharray={dashPt?.join(" ")} />
}
