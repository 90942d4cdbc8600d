import { memo, useMemo } from "react"
import { type Foil, isFoil } from "../../../geometry/section/section"
import { standingOf } from "../../core/chair/chairRecord"
import type { Plan } from "../../core/document/schema"
import { headOf } from "../../core/figures/measured"
import { kindWords, whereOf } from "../../core/text/words"
import { accent, black } from "../../drawing/inks"
import { type ChairState, chairStore, tap } from "../../session/chair/chairStore"
import { restStore } from "../../session/chair/restStore"
import { Ticking } from "../../session/chair/Ticking"
import { useService } from "../../session/chair/useChair"
import { HeadFigure } from "../fields/HeadFigure"
import { type FoilView, foilViews } from "../timing/chart/foilShapes"

/** The foil to place next, where it is on the head, and the one tap for it. */
export function NextFoil({ plan }: { plan: Plan }) {
  const id = useService((chair) => standingOf(chair).nextId)
  const foil = plan.sections.filter(isFoil).find((each) => each.id === id)
  const where = useMemo(() => foil && whereOf(foil, headOf(plan)), [foil, plan])
  if (!foil) return <p className="large">Every foil is on.</p>
  return (
    <>
      <div className="next-foil">
        <div>
          <p className="label">Next foil</p>
          <p className="next-number">{foil.mapNumber}</p>
          <p className="large">
            {kindWords[foil.kind]}, {where}, <b className="nowrap">mix {foil.mix}</b>
          </p>
          <p>
            <Ticking of={chairStore} words={(state) => whenWords(state, foil.id)} />
          </p>
        </div>
        <Where plan={plan} id={foil.id} />
      </div>
      <OnTaps foil={foil} timing={plan.timing} />
      <button type="button" className="touch" onClick={() => tap({ kind: "missed-on", foil: foil.id })}>
        It has been on for a while: the tap was missed
      </button>
    </>
  )
}

/** When a foil goes on as the rest is planned now: "At minute 12", and "Now" from half a minute before. */
const whenWords = ({ live }: ChairState, id: string) => {
  const atMin = restStore.getState().rest?.onAtMin[id]
  if (!live || atMin === undefined) return ""
  return live.chair.elapsedMs / 60_000 + 0.5 > atMin ? "Now" : `At minute ${Math.round(atMin)}`
}

/** One tap for the foil; with two pairs of hands one for each, so that each one's pace is learnt. */
function OnTaps({ foil: { id, mapNumber }, timing }: { foil: Foil; timing: Plan["timing"] }) {
  const words = `Foil ${mapNumber} is on`
  if (timing?.hands !== 2)
    return (
      <button type="button" className="touch giant" onClick={() => tap({ kind: "on", foil: id })}>
        {words}
      </button>
    )
  const [first, second] = timing.people ?? []
  return (
    <div className="touches">
      {([1, 2] as const).map((by) => (
        <button
          key={by}
          type="button"
          className="touch giant half"
          onClick={() => tap({ kind: "on", foil: id, by })}
        >
          {words}
          <small>by {(by === 1 ? first : second)?.trim() || `${by === 1 ? "first" : "second"} pair`}</small>
        </button>
      ))}
    </div>
  )
}

/** The foil on the head, in the view that shows the most of it. */
const Where = memo(function Where({ plan, id }: { plan: Plan; id: string }) {
  const views = useMemo(() => foilViews(plan), [plan])
  const view = bestView(views, id)
  if (!view) return null
  return (
    <div className="where">
      <HeadFigure name={view.name} picture={view.picture}>
        {view.shapes.map((shape) => (
          <path
            key={shape.id}
            d={shape.path}
            fill={shape.id === id ? accent : "none"}
            stroke={shape.id === id ? accent : black}
            strokeWidth={shape.id === id ? 5 : 0.8}
            vectorEffect="non-scaling-stroke"
          />
        ))}
      </HeadFigure>
      <p className="label">{viewWords[view.name]}</p>
    </div>
  )
})

function bestView(views: readonly FoilView[], id: string): FoilView | undefined {
  const widths = views.map(({ shapes }) => widthOf(shapes.find((shape) => shape.id === id)?.path ?? ""))
  return views[widths.indexOf(Math.max(...widths))]
}

const viewWords = {
  front: "From the front",
  right: "Client’s right",
  left: "Client’s left",
  back: "From the back",
  top: "From above",
} as const

/** How far a shape reaches, mm: the larger it stands in a view, the better that view shows it. */
function widthOf(path: string): number {
  const numbers = (path.match(/-?[\d.]+/g) ?? []).map(Number)
  const spread = (values: number[]) => (values.length > 0 ? Math.max(...values) - Math.min(...values) : 0)
  return Math.hypot(
    spread(numbers.filter((_, i) => i % 2 === 0)),
    spread(numbers.filter((_, i) => i % 2 === 1)),
  )
}
