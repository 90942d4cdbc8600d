import { useEffect, useRef, useState } from "react"
import { levelScale } from "../../../presets/timing/lift"
import { recordsOf } from "../../core/chair/chairRecord"
import type { Plan } from "../../core/document/schema"
import { comforts, type LookSeen, stretches } from "../../core/document/serviceRecord"
import { goalOfPlan } from "../../core/lift/liftOfPlan"
import { chairStore, tap } from "../../session/chair/chairStore"
import { useWords } from "../../session/words"
import { burningAt } from "./chairActions"

type Props = {
  foil: string
  name: string
  plan: Plan
  onClose: () => void
  onBurning: (foil: string) => void
}

const levelStep = 0.5
const unknownLevel = 7

/** One look: the level seen, stretch, how the scalp feels, still moist. Nothing is taken as fine that was not said. */
export function LookPad({ foil, name, plan, onClose, onBurning }: Props) {
  const [level, setLevel] = useState(() => lastLevel(foil) ?? goalOfPlan(plan)?.fromLevel ?? unknownLevel)
  const [isLevelSaid, sayLevel] = useState(false)
  const [stretch, setStretch] = useState<LookSeen["stretch"] | null>(null)
  const [comfort, setComfort] = useState<LookSeen["comfort"] | null>(null)
  const [wet, setWet] = useState<"yes" | "no" | null>(null)
  const w = useWords().chair.floor.check
  const pad = useRef<HTMLElement>(null)
  useEffect(() => {
    pad.current?.scrollIntoView({ block: "nearest" })
  }, [])
  const move = (step: number) => {
    sayLevel(true)
    setLevel(Math.min(levelScale.lightest, Math.max(levelScale.darkest, level + step)))
  }
  const seen: LookSeen = {
    level: isLevelSaid ? level : null,
    stretch,
    comfort,
    moist: wet === null ? null : wet === "yes",
  }
  const isSaid = Object.values(seen).some((value) => value !== null)
  const write = () => {
    tap({ kind: "looked", foil, seen })
    onClose()
  }
  const feel = (next: LookSeen["comfort"]) => {
    if (next !== "burning") return setComfort(next)
    burningAt(foil, seen, onBurning)
    onClose()
  }
  const putOff = () => {
    tap({ kind: "not-checked", foils: [foil] })
    onClose()
  }
  return (
    <section ref={pad} className="look-pad" aria-label={w.seen(name)}>
      <fieldset className="touches">
        <legend className="label">{w.level(name)}</legend>
        <button
          type="button"
          className="touch"
          data-again
          aria-label={w.darker}
          onClick={() => move(-levelStep)}
        >
          −
        </button>
        <output className="level-seen">{level}</output>
        <button
          type="button"
          className="touch"
          data-again
          aria-label={w.lighter}
          onClick={() => move(levelStep)}
        >
          +
        </button>
      </fieldset>
      <Touches
        legend={w.stretch}
        options={optionsOf(stretches, w.stretches)}
        value={stretch}
        onChange={setStretch}
      />
      <Touches legend={w.scalp} options={optionsOf(comforts, w.comforts)} value={comfort} onChange={feel} />
      <Touches
        legend={w.product}
        options={optionsOf(wets, { yes: w.moist, no: w.dry })}
        value={wet}
        onChange={setWet}
      />
      <div className="touches">
        <button type="button" className="touch strong" disabled={!isSaid} onClick={write}>
          {w.save}
        </button>
        <button type="button" className="touch" onClick={putOff}>
          {w.notNow}
        </button>
      </div>
    </section>
  )
}

const wets = ["yes", "no"] as const

const optionsOf = <Value extends string>(values: readonly Value[], labels: Readonly<Record<Value, string>>) =>
  values.map((value) => ({ value, label: labels[value] }))

type TouchesProps<Value extends string> = {
  legend: string
  options: readonly { value: Value; label: string }[]
  value: Value | null
  onChange: (value: Value) => void
}

const Touches = <Value extends string>({ legend, options, value, onChange }: TouchesProps<Value>) => (
  <fieldset className="touches">
    <legend className="label">{legend}</legend>
    {options.map((option) => (
      <button
        key={option.value}
        type="button"
        className="touch"
        aria-pressed={option.value === value}
        onClick={() => onChange(option.value)}
      >
        {option.label}
      </button>
    ))}
  </fieldset>
)

function lastLevel(foil: string): number | null {
  const chair = chairStore.getState().live?.chair
  return (chair && recordsOf(chair).get(foil)?.looks.at(-1)?.seen.level) ?? null
}
