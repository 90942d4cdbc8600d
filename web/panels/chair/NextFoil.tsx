import { memo, useMemo, useState } from "react"
import { type Foil, isFoil } from "../../../geometry/section/section"
import { type Holds, holdsMix } from "../../core/cautions/clearance"
import { standingOf } from "../../core/chair/chairRecord"
import type { Plan } from "../../core/document/schema"
import { foilsIn } from "../../core/figures/foilCount"
import { headOf } from "../../core/figures/measured"
import { pieceOf } from "../../core/kinds/kindRecords"
import { coatCodes } from "../../core/placement/coatCodes"
import { placeOf } from "../../core/placement/places"
import { black } from "../../drawing/inks"
import { type ChairState, chairStore, tap } from "../../session/chair/chairStore"
import { restStore } from "../../session/chair/restStore"
import { Ticking } from "../../session/chair/Ticking"
import { useService } from "../../session/chair/useChair"
import { useWords } from "../../session/words"
import type { ChairWords } from "../../words/en/chair/chair"
import { say } from "../../words/say"
import { type FoilView, foilViews } from "../heads/foilViews"
import { HeadFigure } from "../heads/HeadFigure"

/** The foil to place next in each lane: one for a colourist alone, one a side where two work. */
export function NextFoil({ plan, holds }: { plan: Plan; holds: Holds }) {
  const isTwo = useService((chair) => chair.foils.some(({ lane }) => lane !== undefined)) ?? false
  const w = useWords().chair.floor
  const [first, second] = plan.timing?.people ?? []
  const given = { plan, holds }
  if (!isTwo) return <Lane {...given} lane={1} by={undefined} who={null} />
  return (
    <div className="lanes">
      <Lane {...given} lane={1} by={1} who={first?.trim() || w.colourist} />
      <Lane {...given} lane={2} by={2} who={second?.trim() || w.assistant} />
    </div>
  )
}

type LaneProps = {
  plan: Plan
  holds: Holds
  lane: 1 | 2
  by: 1 | 2 | undefined
  who: string | null
}

/**
 * The next foil of a lane, where it is on the head, the one tap for it, and the others of its queue. A stop or an open
 * question holds the tap; that a foil went on before it came up may always be said.
 */
function Lane({ plan, holds, lane, by, who }: LaneProps) {
  const queue = useService((chair) => standingOf(chair).queues[lane].map(({ id }) => id)) ?? []
  const [chosen, choose] = useState<string | null>(null)
  const foils = plan.sections.filter(isFoil)
  const id = chosen !== null && queue.includes(chosen) ? chosen : queue[0]
  const foil = foils.find((each) => each.id === id)
  const place = useMemo(() => foil && placeOf(foil, headOf(plan)), [foil, plan])
  const { chair, common } = useWords()
  const w = chair.floor
  const all = useService(({ foils: placed }) => pieceOf(placed)) ?? "foil"
  if (!foil || !place) return <p className="large">{who ? `${w.lane(who)}: ${w.laneDone}` : w.allOn(all)}</p>
  const outOfTurn = id !== queue[0] && { outOfTurn: true as const }
  const piece = pieceOf([foil])
  const coats = coatCodes(foil)
  const others = foils.filter((each) => queue.includes(each.id) && each.id !== id)
  return (
    <section className="lane" aria-label={who ? w.lane(who) : w.nextFoil(piece)}>
      <div className="next-foil">
        <div>
          <p className="label">{who ? w.lane(who) : w.nextFoil(piece)}</p>
          <p className="next-number">{foil.mapNumber}</p>
          <p className="large">
            {w.what({
              kind: common.kinds[foil.kind],
              place: say(common.place, place),
              foils: foilsIn(foil, plan),
            })}
            , <b className={coats.length > 1 ? "" : "nowrap"}>{common.coats(coats)}</b>
          </p>
          <p>
            <Ticking of={chairStore} words={(state) => whenWords(state, foil.id, w)} />
          </p>
        </div>
        <Where plan={plan} id={foil.id} />
      </div>
      <button
        type="button"
        className={by ? "touch giant half" : "touch giant"}
        disabled={holdsMix(holds, ...coats.map(({ mix }) => mix))}
        onClick={() => tap({ kind: "on", foil: foil.id, ...(by && { by }), ...outOfTurn })}
      >
        {w.isOn(foil.mapNumber, piece)}
      </button>
      <button
        type="button"
        className="touch"
        onClick={() => tap({ kind: "missed-on", foil: foil.id, ...(by && { by }) })}
      >
        {w.wentOnEarlier}
      </button>
      {others.length > 0 && <Queue foils={others} onChoose={choose} />}
    </section>
  )
}

/** The foils of a lane that wait: any of them may come first. */
function Queue({ foils, onChoose }: { foils: readonly Foil[]; onChoose: (id: string) => void }) {
  const w = useWords().chair.floor
  return (
    <details className="queue">
      <summary>{w.otherFoil(pieceOf(foils))}</summary>
      <div className="touches">
        {foils.map(({ id, kind, mapNumber }) => (
          <button
            key={id}
            type="button"
            className="touch"
            aria-label={w.foilName(mapNumber, pieceOf([{ kind }]))}
            onClick={() => onChoose(id)}
          >
            {mapNumber}
          </button>
        ))}
      </div>
    </details>
  )
}

/** When a foil goes on as the rest is planned now: "At minute 12", and "Now" from half a minute before. */
const whenWords = ({ live }: ChairState, id: string, w: ChairWords["floor"]) => {
  const atMin = restStore.getState().rest?.onAtMin[id]
  if (!live || atMin === undefined) return ""
  return live.chair.elapsedMs / 60_000 + 0.5 > atMin ? w.now : w.atMinute(atMin)
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
            fill={shape.id === id ? black : "none"}
            stroke={black}
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
