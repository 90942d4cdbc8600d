import { bowlFigures, scaleStepsG } from "../../../presets/formula/bowlFigures"
import { tradePairs } from "../../../presets/formula/developers"
import { limits } from "../../core/document/limits"
import { type PriceName, priceNames } from "../../core/document/salon"
import { labelPercent } from "../../core/mixing/strength"
import { numberText } from "../../core/text/numberText"
import type { SalonShelf } from "../../core/weighing/salonRecord"
import { changeSalonHere, useSalon } from "../../session/useSalon"
import { Chips } from "../fields/Chips"
import { Choices } from "../fields/Choices"
import { NumberField } from "../fields/NumberField"
import { priceNameWords } from "./priceWords"

/** Which developers stand on the shelf, what the scale shows, and what the salon asks for its work. Kept in this browser. */
export function ShelfPanel() {
  const { salon } = useSalon()
  return (
    <details>
      <summary>Your shelf, scale and prices</summary>
      <div className="column salon">
        <Bottles salon={salon} />
        <ScaleStep salon={salon} />
        <div className="pairs">
          <NumberField
            name="1 kg of developer costs"
            unit=""
            value={
              salon.developerPrice ? (1000 * salon.developerPrice.amount) / salon.developerPrice.forG : 0
            }
            isUnset={salon.developerPrice === null}
            range={limits.price}
            onClear={() =>
              changeSalonHere("Take out the price of developer", (own) => ({ ...own, developerPrice: null }))
            }
            onCommit={(amount) => {
              void changeSalonHere("Price the developer", (own) => ({
                ...own,
                developerPrice: { amount, forG: 1000 },
              }))
            }}
          />
          {priceNames.map((name) => (
            <PriceField key={name} name={name} price={salon.prices[name]} />
          ))}
        </div>
        <p className="aside">In your own money. What is left empty is left out of the quote.</p>
      </div>
    </details>
  )
}

const volumeLabel = (volume: number) => `${numberText(volume)} vol, ${numberText(labelPercent(volume), 1)} %`

function Bottles({ salon: { bottles } }: { salon: SalonShelf }) {
  const stand = (volumes: readonly number[]) =>
    void changeSalonHere("Change the bottles on the shelf", (own) => ({
      ...own,
      bottles: [...new Set(volumes)].toSorted((a, b) => a - b),
    }))
  const offered = [...new Set([...tradePairs.map(({ volume }) => volume), ...bottles])].toSorted(
    (a, b) => a - b,
  )
  return (
    <div className="column-tight">
      <Chips
        legend="Developers on your shelf"
        options={offered.map((volume) => ({ value: String(volume), label: volumeLabel(volume) }))}
        chosen={bottles.map(String)}
        onChange={(volumes) => stand(volumes.map(Number))}
      />
      <NumberField
        key={bottles.length}
        name="or another strength"
        unit="vol"
        value={20}
        isUnset
        range={limits.developerVolume}
        onCommit={(volume) => stand([...bottles, volume])}
      />
      <p className="aside">
        A strength that is not here is poured from two that are, by weight. With none marked, all are taken to
        be here.
      </p>
    </div>
  )
}

function ScaleStep({ salon: { scaleStepG } }: { salon: SalonShelf }) {
  const usual = bowlFigures.scaleStepG.value
  return (
    <Choices
      legend="Your scale shows steps of"
      options={scaleStepsG.map((step) => ({ value: String(step), label: `${step} g` }))}
      value={String(scaleStepG ?? usual)}
      onChange={(step) =>
        void changeSalonHere("Change the step of the scale", (own) => ({ ...own, scaleStepG: Number(step) }))
      }
    />
  )
}

function PriceField({ name, price }: { name: PriceName; price: number | null }) {
  const set = (amount: number | null) =>
    changeSalonHere(`Change the price: ${priceNameWords[name].toLowerCase()}`, (own) => ({
      ...own,
      prices: { ...own.prices, [name]: amount },
    }))
  return (
    <NumberField
      name={priceNameWords[name]}
      unit=""
      value={price ?? 0}
      isUnset={price === null}
      range={limits.price}
      onClear={() => set(null)}
      onCommit={(amount) => {
        void set(amount)
      }}
    />
  )
}
