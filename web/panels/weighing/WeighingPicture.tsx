import type { SeenWeighing } from "../../core/weighing/weighingsSeen"
import { accent, black } from "../../drawing/inks"
import { useWords } from "../../session/words"
import { Scroller } from "../fields/Scroller"

const [left, top, size] = [64, 16, 340]

/** Expected against weighed, a mark a bowl: on the line where they agree, its bar the range that was expected. */
export function WeighingPicture({ rows }: { rows: readonly SeenWeighing[] }) {
  const w = useWords().weighing.picture
  const most = niceEnd(Math.max(...rows.map(({ row, expectedG }) => Math.max(row.productG, expectedG.high))))
  const x = (grams: number) => left + (grams / most) * size
  const y = (grams: number) => top + (1 - grams / most) * size
  const steps = [0, 1, 2, 3, 4].map((step) => (step * most) / 4)
  return (
    <figure className="weighing-picture">
      <Scroller name={w.name}>
        <svg
          className="chart"
          viewBox={`0 0 ${left + size + 30} ${top + size + 56}`}
          width={left + size + 30}
          height={top + size + 56}
          aria-hidden="true"
        >
          {steps.map((grams) => (
            <g key={grams} fontSize={16} fill={black}>
              <line x1={left} x2={left + size} y1={y(grams)} y2={y(grams)} stroke="#d9cfbf" />
              <text x={left - 10} y={y(grams) + 5} textAnchor="end">
                {grams}
              </text>
              <text x={x(grams)} y={top + size + 24} textAnchor="middle">
                {grams}
              </text>
            </g>
          ))}
          <line x1={x(0)} y1={y(0)} x2={x(most)} y2={y(most)} stroke={black} strokeWidth={1.6} />
          {rows.map(({ row, expectedG, isDoubted }) => (
            <Weighed
              key={row.id}
              at={[x(row.productG), y(expectedG.mid)]}
              reach={[y(expectedG.low), y(expectedG.high)]}
              look={row.leftOut ? "out" : isDoubted ? "doubted" : "counted"}
            />
          ))}
          <text x={left + size} y={top + size + 48} fontSize={16} textAnchor="end" fill={black}>
            {w.axis}
          </text>
        </svg>
      </Scroller>
      <figcaption className="aside">{w.legend}</figcaption>
    </figure>
  )
}

type WeighedProps = {
  at: readonly [number, number]
  reach: readonly [number, number]
  look: "counted" | "doubted" | "out"
}

function Weighed({ at: [x, y], reach: [low, high], look }: WeighedProps) {
  const ink = look === "doubted" ? accent : black
  return (
    <g stroke={ink} strokeWidth={2}>
      <line x1={x} x2={x} y1={low} y2={high} strokeOpacity={0.45} />
      {look === "doubted" ? (
        <path d={`M${x - 6} ${y - 6}l12 12m0 -12l-12 12`} strokeWidth={3} />
      ) : (
        <circle cx={x} cy={y} r={5} fill={look === "out" ? "#fffdf9" : ink} />
      )}
    </g>
  )
}

/** The end of an axis that can be parted in four round steps. */
function niceEnd(grams: number) {
  const step = 10 ** Math.floor(Math.log10(Math.max(grams, 1) / 4))
  const nice = [1, 1.5, 2, 2.5, 3, 4, 5, 7.5, 10].find((each) => 4 * each * step >= grams) ?? 10
  return 4 * nice * step
}
