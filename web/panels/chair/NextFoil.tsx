import { memo, useMemo } from "react"
import { type Foil, isFoil } from "../../../geometry/section/section"
import { standingOf } from "../../core/chair/chairRecord"
import type { Plan } from "../../core/document/schema"
import { headOf } from "../../core/figures/measured"
import { placeOf } from "../../core/placement/places"
import { accent, black } from "../../drawing/inks"
import { type ChairState, chairStore, tap } from "../../session/chair/chairStore"
import { restStore } from "../../session/chair/restStore"
import { Ticking } from "../../session/chair/Ticking"
import { useService } from "../../session/chair/useChair"
import { useWords } from "../../session/words"
import type { ChairWords } from "../../words/en/chair/chair"
import { say } from "../../words/say"
import { HeadFigure } from "../fields/HeadFigure"
import { type FoilView, foilViews } from "../timing/chart/foilShapes"

/** The foil to place next, where it is on the head, and the one tap for it. */
export function NextFoil({ plan }: { plan: Plan }) {
  const id = useService((chair) => standingOf(chair).nextId)
  const foil = plan.sections.filter(isFoil).find((each) => each.id === id)
  const place = useMemo(() => foil && placeOf(foil, headOf(plan)), [foil, plan])
  const { chair, common } = useWords()
  const w = chair.floor
  if (!foil || !place) return <p className="large">{w.allOn}</p>
  return (
    <>
      <div className="next-foil">
        <div>
          <p className="label">{w.nextFoil}</p>
          <p className="next-number">{foil.mapNumber}</p>
          <p className="large">
            {w.what({ kind: common.kinds[foil.kind], place: say(common.place, place) })},{" "}
            <b className="nowrap">{w.mix(foil.mix)}</b>
          </p>
          <p>
            <Ticking of={chairStore} words={(state) => whenWords(state, foil.id, w)} />
          </p>
        </div>
        <Where plan={plan} id={foil.id} />
      </div>
      <OnTaps foil={foil} timing={plan.timing} />
      <button type="button" className="touch" onClick={() => tap({ kind: "missed-on", foil: foil.id })}>
        {w.wentOnEarlier}
      </button>
    </>
  )
}

/** When a foil goes on as the rest is planned now: "At minute 12", and "Now" from half a minute before. */
const whenWords = ({ live }: ChairState, id: string, w: ChairWords["floor"]) => {
  const atMin = restStore.getState().rest?.onAtMin[id]
  if (!live || atMin === undefined) return ""
  return live.chair.elapsedMs / 60_000 + 0.5 > atMin ? w.now : w.atMinute(atMin)
}

/** One tap for the foil; with two pairs of hands one for each, so that each one's pace is learnt. */
function OnTaps({ foil: { id, mapNumber }, timing }: { foil: Foil; timing: Plan["timing"] }) {
  const w = useWords().chair.floor
  const words = w.isOn(mapNumber)
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
          <small>{w.by((by === 1 ? first : second)?.trim() || (by === 1 ? w.colourist : w.assistant))}</small>
        </button>
      ))}
    </div>
  )
}

/** The foil on the head, in the view that shows the most of it. */
const Where = memo(function Where({ plan, id }: { plan: Plan; id: string }) {
  const views = useMemo(() => foilViews(plan), [plan])
  const view = bestView(views, id)
  const { views: names } = useWords().timing.head
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
      <p className="label">{names[view.name]}</p>
    </div>
  )
})

function bestView(views: readonly FoilView[], id: string): FoilView | undefined {
  const widths = views.map(({ shapes }) => widthOf(shapes.find((shape) => shape.id === id)?.path ?? ""))
  return views[widths.indexOf(Math.max(...widths))]
}

/** How far a shape reaches, mm: the larger it stands in a view, the better that view shows it. */
function widthOf(path: string): number {
  const numbers = (path.match(/-?[\d.]+/g) ?? []).map(Number)
  const spread = (values: number[]) => (values.length > 0 ? Math.max(...values) - Math.min(...values) : 0)
  return Math.hypot(
    spread(numbers.filter((_, i) => i % 2 === 0)),
    spread(numbers.filter((_, i) => i % 2 === 1)),
  )
}
