import { black, paper } from "../../drawing/inks"
import { useWords } from "../../session/words"
import type { FoilView } from "./foilViews"
import { HeadFigure } from "./HeadFigure"

/** How one foil is filled and edged. */
export type FoilPaint = {
  fill: string
  fillOpacity: number
  stroke: string
  strokeWidth: number
  strokeDasharray?: string
}

type Props = { views: readonly FoilView[]; paintOf: (id: string) => FoilPaint }

/** Small heads with every foil and its number, painted as the screen beside them tells it. */
export function FoilHeads({ views, paintOf }: Props) {
  const { views: names } = useWords().timing.head
  return (
    <div className="foil-heads">
      <div>
        {views.map((view) => (
          <figure key={view.name}>
            <HeadFigure name={view.name} picture={view.picture}>
              {view.shapes.map(({ id, path }) => (
                <path key={id} d={path} {...paintOf(id)} vectorEffect="non-scaling-stroke" />
              ))}
              <FoilNumbers labels={view.labels} />
            </HeadFigure>
            <figcaption>{names[view.name]}</figcaption>
          </figure>
        ))}
      </div>
    </div>
  )
}

const FoilNumbers = ({ labels }: Pick<FoilView, "labels">) =>
  labels.map(({ text, x, y, leader }) => (
    <g key={text} className="foil-number">
      <path
        d={leader}
        stroke={black}
        strokeOpacity={0.7}
        strokeWidth={0.6}
        vectorEffect="non-scaling-stroke"
      />
      <circle cx={x} cy={y} r={8} fill={paper} />
      <text x={x} y={y + 4.6} fontSize={13} fontWeight={650} textAnchor="middle" fill={black}>
        {text}
      </text>
    </g>
  ))
