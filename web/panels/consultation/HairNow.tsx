import { useState } from "react"
import {
  type Consultation,
  type HairHistory,
  type HairState,
  hairHistories,
  type StrandPart,
  strandParts,
  type Zone,
  zoneNames,
} from "../../plan/consultation"
import { Choices } from "../Choices"
import { SelectField } from "../SelectField"
import type { PartProps } from "./Consultation"
import {
  historyWords,
  levelOptions,
  numberOf,
  optionOf,
  partWords,
  porosityOptions,
  stretchOptions,
  zoneOptions,
} from "./consultationWords"

const unknownHair: HairState = { level: null, history: null, porosity: null, stretch: null }
const places = [{ value: "all", label: "All over" }, ...zoneOptions] as const
type Place = Zone | "all"

/** The hair as it is, from roots to ends: all over at once, or zone by zone where they differ. */
export function HairNow({ known, write }: PartProps) {
  const [place, setPlace] = useState<Place>("all")
  const shown = place === "all" ? "hairline" : place
  return (
    <div className="hair-now">
      <h3>The hair now</h3>
      <Choices legend="Where" options={places} value={place} onChange={setPlace} />
      {strandParts.map((part) => (
        <StrandRow
          key={part}
          part={part}
          state={known.hair[shown]?.[part] ?? unknownHair}
          onChange={(change) =>
            write(`Write down the ${partWords[part].toLowerCase()}`, {
              hair: withState(known.hair, place, part, change),
            })
          }
        />
      ))}
    </div>
  )
}

/** The hair with one part of the strand changed, in one zone or in all. */
function withState(
  hair: Consultation["hair"],
  place: Place,
  part: StrandPart,
  change: Partial<HairState>,
): Consultation["hair"] {
  const zones: readonly Zone[] = place === "all" ? zoneNames : [place]
  const changed = { ...hair }
  for (const zone of zones)
    changed[zone] = { ...hair[zone], [part]: { ...unknownHair, ...hair[zone]?.[part], ...change } }
  return changed
}

type RowProps = { part: StrandPart; state: HairState; onChange: (change: Partial<HairState>) => void }

function StrandRow({ part, state, onChange }: RowProps) {
  return (
    <fieldset className="strand">
      <legend>{partWords[part]}</legend>
      <div className="pairs">
        <SelectField
          name="Level"
          options={levelOptions}
          value={optionOf(state.level)}
          onChange={(value) => onChange({ level: numberOf(value) })}
        />
        <SelectField
          name="Porosity"
          options={porosityOptions}
          value={state.porosity}
          onChange={(porosity) => onChange({ porosity })}
        />
        <SelectField
          name="Wet stretch"
          options={stretchOptions}
          value={state.stretch}
          onChange={(stretch) => onChange({ stretch })}
        />
      </div>
      <HistoryField history={state.history} onChange={(history) => onChange({ history })} />
    </fieldset>
  )
}

type History = readonly HairHistory[] | null

function HistoryField({ history, onChange }: { history: History; onChange: (history: History) => void }) {
  const toggle = (kind: HairHistory, isOn: boolean) =>
    onChange(isOn ? [...(history ?? []), kind] : (history ?? []).filter((each) => each !== kind))
  return (
    <div className="choices">
      <label>
        <input
          type="checkbox"
          checked={history?.length === 0}
          onChange={({ target }) => onChange(target.checked ? [] : null)}
        />
        <span>Never treated</span>
      </label>
      {hairHistories.map((kind) => (
        <label key={kind}>
          <input
            type="checkbox"
            checked={history?.includes(kind) ?? false}
            onChange={({ target }) => toggle(kind, target.checked)}
          />
          <span>{historyWords[kind]}</span>
        </label>
      ))}
    </div>
  )
}
