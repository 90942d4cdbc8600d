import { toneWheel } from "../../../../presets/formula/toneWheel"
import { pigmentAt } from "../../../core/tone/tone"
import { black } from "../../../drawing/inks"
import { useWords } from "../../../session/words"

const [middle, outer, inner, lettersAt] = [240, 112, 62, 126]

/** The wheel with what shows at a level, and across from it what neutralises it. A picture of words, not of a colour. */
export function ToneWheel({ level }: { level: number }) {
  const w = useWords().formula.tone.wheel
  const { onWheel } = pigmentAt(level)
  const shown = toneWheel.findIndex(({ name }) => name === onWheel)
  const across = (shown + toneWheel.length / 2) % toneWheel.length
  const [from, to] = [shown, across].map((index) => at(index, inner - 8))
  return (
    <svg
      className="tone-wheel"
      viewBox={`0 ${middle - 160} ${2 * middle} 320`}
      width={2 * middle}
      height={320}
      aria-hidden="true"
    >
      {toneWheel.map(({ name, hue }, index) => {
        const isMarked = index === shown || index === across
        return (
          <path
            key={name}
            d={sector(index)}
            fill={hue}
            fillOpacity={isMarked ? 1 : 0.35}
            stroke={isMarked ? black : "#fbf8f2"}
            strokeWidth={isMarked ? 3 : 2}
          />
        )
      })}
      <line x1={from[0]} y1={from[1]} x2={to[0]} y2={to[1]} stroke={black} strokeWidth={2} />
      <circle cx={from[0]} cy={from[1]} r={5} fill={black} />
      <circle cx={to[0]} cy={to[1]} r={5} fill="#fbf8f2" stroke={black} strokeWidth={2} />
      <Words index={shown} words={w.shows(toneWheel[shown].name)} />
      <Words index={across} words={w.neutralises(toneWheel[across].name)} />
    </svg>
  )
}

function Words({ index, words }: { index: number; words: string }) {
  const [x, y] = at(index, lettersAt)
  const anchor = Math.abs(x - middle) < 20 ? "middle" : x > middle ? "start" : "end"
  return (
    <text x={x} y={y + 6} fontSize={17} textAnchor={anchor} fill={black}>
      {words}
    </text>
  )
}

/** A place on the wheel: the middle of a name, so far from the centre. */
function at(index: number, reach: number): [number, number] {
  const angle = ((index + 0.5) / toneWheel.length) * 2 * Math.PI - Math.PI / 2
  return [middle + reach * Math.cos(angle), middle + reach * Math.sin(angle)]
}

function sector(index: number) {
  const corner = (turn: number, reach: number) =>
    at(index + turn - 0.5, reach)
      .map((value) => value.toFixed(2))
      .join(" ")
  return `M${corner(0, inner)}L${corner(0, outer)}A${outer} ${outer} 0 0 1 ${corner(1, outer)}L${corner(1, inner)}A${inner} ${inner} 0 0 0 ${corner(0, inner)}Z`
}
