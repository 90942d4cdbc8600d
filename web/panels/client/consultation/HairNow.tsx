import { useState } from "react"
import type { Clearance } from "../../../core/cautions/clearance"
import type { HairHistory, HairState } from "../../../core/document/consultation"
import { hairHistories } from "../../../core/document/consultation"
import { hairRuns } from "../../../core/text/hairRuns"
import { changeStrand, commonState, type StrandPlace } from "../../../core/text/strandPlaces"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { labelledOptions } from "../../fields/options"
import { partOptions, placeOptions } from "./consultationOptions"
import { LevelChips } from "./LevelChips"
import type { ClientDone, PartProps } from "./partProps"
import { StopsHere } from "./StopsHere"

const allOver: StrandPlace = { zone: "all", part: "all" }

/** The hair as it is: all over and root to ends at once, then zone by zone and part by part where it differs. */
export function HairNow({ known, write, told }: PartProps & { told: Clearance }) {
  const words = useWords()
  const { hair: said } = words.client
  const [place, setPlace] = useState(allOver)
  const state = commonState(known.hair, place)
  const change = (label: ClientDone["code"], next: (state: HairState) => HairState) =>
    write(label, { hair: changeStrand(known.hair, place, next) })
  const set = (label: ClientDone["code"], part: Partial<HairState>) =>
    change(label, (each) => ({ ...each, ...part }))
  return (
    <div className="hair-now">
      <div className="place">
        <Choices
          legend={said.where}
          options={placeOptions(words)}
          value={place.zone}
          onChange={(zone) => setPlace({ ...place, zone })}
        />
        <Choices
          legend={said.along}
          options={partOptions(words)}
          value={place.part}
          onChange={(part) => setPlace({ ...place, part })}
        />
      </div>
      <LevelChips
        legend={said.level}
        level={state.level}
        shown="natural"
        onChange={(level) => set("set-level", { level })}
      />
      <div id="field-history">
        <HistoryChips history={state.history} onChange={(next) => change("set-history", next)} />
        <StopsHere told={told} fields={["history"]} />
      </div>
      <div className="place">
        <div id="field-porosity">
          <Choices
            legend={said.porosity}
            options={labelledOptions(said.porosities)}
            value={state.porosity}
            onChange={(porosity) => set("set-porosity", { porosity })}
            onClear={() => set("clear-porosity", { porosity: null })}
          />
        </div>
        <div id="field-stretch">
          <Choices
            legend={said.stretch}
            options={labelledOptions(said.stretches)}
            value={state.stretch}
            onChange={(stretch) => set("set-stretch", { stretch })}
            onClear={() => set("clear-stretch", { stretch: null })}
          />
          <StopsHere told={told} fields={["stretch"]} />
        </div>
      </div>
      <div className="written">
        {hairRuns(known.hair).map((zones) => (
          <p key={zones.zones[0]}>{said.line(zones)}</p>
        ))}
      </div>
    </div>
  )
}

type HistoryProps = {
  history: readonly HairHistory[] | null
  onChange: (next: (state: HairState) => HairState) => void
}

/** Never treated, or all that it has been through; each part of the place keeps what else it has been through. */
function HistoryChips({ history, onChange }: HistoryProps) {
  const said = useWords().client.hair
  const toggle = (kind: HairHistory, isOn: boolean) =>
    onChange((state) => {
      const others = (state.history ?? []).filter((each) => each !== kind)
      const left = isOn ? [...others, kind] : others
      return { ...state, history: left.length > 0 ? left : null }
    })
  return (
    <fieldset>
      <legend>{said.history}</legend>
      <div className="choices">
        <label>
          <input
            type="checkbox"
            checked={history?.length === 0}
            onChange={({ target }) =>
              onChange((state) => ({ ...state, history: target.checked ? [] : null }))
            }
          />
          <span>{said.neverTreated}</span>
        </label>
        {hairHistories.map((kind) => (
          <label key={kind}>
            <input
              type="checkbox"
              checked={history?.includes(kind) ?? false}
              onChange={({ target }) => toggle(kind, target.checked)}
            />
            <span>{said.histories[kind]}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
