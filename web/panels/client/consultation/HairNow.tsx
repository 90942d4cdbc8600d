import { useState } from "react"
import type { HairHistory, HairState } from "../../../core/document/consultation"
import { hairHistories } from "../../../core/document/consultation"
import { historyWords } from "../../../core/text/hairTerms"
import { hairWords } from "../../../core/text/hairWords"
import { changeStrand, commonState, type StrandPlace } from "../../../core/text/strandPlaces"
import { Choices } from "../../fields/Choices"
import { partOptions, placeOptions, porosityOptions, stretchOptions } from "./consultationWords"
import { LevelChips } from "./LevelChips"
import type { PartProps } from "./partProps"

const allOver: StrandPlace = { zone: "all", part: "all" }

/** The hair as it is: all over and root to ends at once, then zone by zone and part by part where it differs. */
export function HairNow({ known, write }: PartProps) {
  const [place, setPlace] = useState(allOver)
  const state = commonState(known.hair, place)
  const change = (label: string, next: (state: HairState) => HairState) =>
    write(label, { hair: changeStrand(known.hair, place, next) })
  const set = (label: string, part: Partial<HairState>) => change(label, (each) => ({ ...each, ...part }))
  return (
    <section className="hair-now" aria-labelledby="hair-now-title">
      <h3 id="hair-now-title">The hair now</h3>
      <div className="place">
        <Choices
          legend="Where"
          options={placeOptions}
          value={place.zone}
          onChange={(zone) => setPlace({ ...place, zone })}
        />
        <Choices
          legend="Along the strand"
          options={partOptions}
          value={place.part}
          onChange={(part) => setPlace({ ...place, part })}
        />
      </div>
      <LevelChips
        legend="Level now"
        level={state.level}
        onChange={(level) => set("Write down the level", { level })}
      />
      <HistoryChips history={state.history} onChange={(next) => change("Write down the history", next)} />
      <div className="place">
        <Choices
          legend="Porosity"
          options={porosityOptions}
          value={state.porosity}
          onChange={(porosity) => set("Write down the porosity", { porosity })}
          onClear={() => set("Leave the porosity open", { porosity: null })}
        />
        <Choices
          legend="Drawn out wet, a hair"
          options={stretchOptions}
          value={state.stretch}
          onChange={(stretch) => set("Write down the stretch", { stretch })}
          onClear={() => set("Leave the stretch open", { stretch: null })}
        />
      </div>
      <div className="written">
        {hairWords(known.hair).map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
    </section>
  )
}

type HistoryProps = {
  history: readonly HairHistory[] | null
  onChange: (next: (state: HairState) => HairState) => void
}

/** Never treated, or all that it has been through; each part of the place keeps what else it has been through. */
function HistoryChips({ history, onChange }: HistoryProps) {
  const toggle = (kind: HairHistory, isOn: boolean) =>
    onChange((state) => {
      const others = (state.history ?? []).filter((each) => each !== kind)
      const left = isOn ? [...others, kind] : others
      return { ...state, history: left.length > 0 ? left : null }
    })
  return (
    <fieldset>
      <legend>It has been</legend>
      <div className="choices">
        <label>
          <input
            type="checkbox"
            checked={history?.length === 0}
            onChange={({ target }) =>
              onChange((state) => ({ ...state, history: target.checked ? [] : null }))
            }
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
    </fieldset>
  )
}
