import { useEffect, useRef, useState } from "react"
import { levelScale } from "../../../presets/timing/lift"
import { recordsOf } from "../../core/chair/chairRecord"
import type { Plan } from "../../core/document/schema"
import type { LookSeen } from "../../core/document/serviceRecord"
import { goalOfPlan } from "../../core/lift/liftOfPlan"
import { chairStore, tap } from "../../session/chair/chairStore"

type Props = { foil: string; name: string; plan: Plan; onClose: () => void }

const stretches = [
  { value: "ok", label: "Ok" },
  { value: "soft", label: "Soft" },
  { value: "stop", label: "Stop" },
] as const
const comforts = [
  { value: "ok", label: "Ok" },
  { value: "warm", label: "Warm" },
  { value: "burning", label: "Burning" },
] as const
const wets = [
  { value: "yes", label: "Moist" },
  { value: "no", label: "Dry" },
] as const

const levelStep = 0.5
const unknownLevel = 7

/** One look: the level seen, stretch, how the scalp feels, still moist. Nothing is taken as fine that was not said. */
export function LookPad({ foil, name, plan, onClose }: Props) {
  const [level, setLevel] = useState(() => lastLevel(foil) ?? goalOfPlan(plan)?.fromLevel ?? unknownLevel)
  const [stretch, setStretch] = useState<LookSeen["stretch"] | null>(null)
  const [comfort, setComfort] = useState<LookSeen["comfort"] | null>(null)
  const [wet, setWet] = useState<"yes" | "no" | null>(null)
  const pad = useRef<HTMLElement>(null)
  useEffect(() => {
    pad.current?.scrollIntoView({ block: "nearest" })
  }, [])
  const move = (step: number) =>
    setLevel(Math.min(levelScale.lightest, Math.max(levelScale.darkest, level + step)))
  const write = () => {
    if (stretch === null || comfort === null || wet === null) return
    tap({ kind: "looked", foil, seen: { level, stretch, comfort, moist: wet === "yes" } })
    onClose()
  }
  return (
    <section ref={pad} className="look-pad" aria-label={`${name}: what you saw`}>
      <fieldset className="touches">
        <legend className="label">{name}: level seen</legend>
        <button
          type="button"
          className="touch"
          aria-label="Half a level darker"
          onClick={() => move(-levelStep)}
        >
          −
        </button>
        <output className="level-seen">{level}</output>
        <button
          type="button"
          className="touch"
          aria-label="Half a level lighter"
          onClick={() => move(levelStep)}
        >
          +
        </button>
      </fieldset>
      <Touches legend="Stretch" options={stretches} value={stretch} onChange={setStretch} />
      <Touches legend="Scalp" options={comforts} value={comfort} onChange={setComfort} />
      <Touches legend="Product" options={wets} value={wet} onChange={setWet} />
      <div className="touches">
        <button
          type="button"
          className="touch strong"
          disabled={stretch === null || comfort === null || wet === null}
          onClick={write}
        >
          Write it down
        </button>
        <button type="button" className="touch" onClick={onClose}>
          Not now
        </button>
      </div>
    </section>
  )
}

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
