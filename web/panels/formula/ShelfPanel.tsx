import { bowlFigures, scaleStepsG } from "../../../presets/formula/bowlFigures"
import { tradePairs } from "../../../presets/formula/developers"
import { type PriceName, priceNames } from "../../core/document/salon"
import { limits } from "../../core/fields/limits"
import { labelPercent } from "../../core/mixing/strength"
import type { SalonShelf } from "../../core/weighing/salonRecord"
import { changeSalonHere, useSalon } from "../../session/salon/useSalon"
import { useWords } from "../../session/words"
import { Chips } from "../fields/Chips"
import { Choices } from "../fields/Choices"
import { NumberField } from "../fields/NumberField"
import { ContactFields } from "./ContactFields"

/** Which developers stand on the shelf, what the scale shows, and what the salon asks for its work. Kept in this browser. */
export function ShelfPanel() {
  const w = useWords().formula.stock
  const { salon } = useSalon()
  return (
    <details>
      <summary>{w.title}</summary>
      <div className="column salon">
        <ContactFields contact={salon.contact} />
        <Bottles salon={salon} />
        <ScaleStep salon={salon} />
        <div className="pairs">
          <NumberField
            name={w.developerPrice}
            unit=""
            value={
              salon.developerPrice ? (1000 * salon.developerPrice.amount) / salon.developerPrice.forG : 0
            }
            isUnset={salon.developerPrice === null}
            range={limits.price}
            onClear={() =>
              changeSalonHere({ chapter: "formula", code: "change-developer-price" }, (own) => ({
                ...own,
                developerPrice: null,
              }))
            }
            onCommit={(amount) => {
              void changeSalonHere({ chapter: "formula", code: "change-developer-price" }, (own) => ({
                ...own,
                developerPrice: { amount, forG: 1000 },
              }))
            }}
          />
          {priceNames.map((name) => (
            <PriceField key={name} name={name} price={salon.prices[name]} />
          ))}
        </div>
        <p className="aside">{w.currency}</p>
      </div>
    </details>
  )
}

function Bottles({ salon: { bottles } }: { salon: SalonShelf }) {
  const { common, formula } = useWords()
  const { mixing, stock: w } = formula
  const stand = (volumes: readonly number[]) =>
    void changeSalonHere({ chapter: "formula", code: "change-bottles" }, (own) => ({
      ...own,
      bottles: [...new Set(volumes)].toSorted((a, b) => a - b),
    }))
  const offered = [...new Set([...tradePairs.map(({ volume }) => volume), ...bottles])].toSorted(
    (a, b) => a - b,
  )
  return (
    <div className="column-tight">
      <Chips
        legend={w.developers}
        options={offered.map((volume) => ({
          value: String(volume),
          label: mixing.vol({ volume, percent: labelPercent(volume) }),
        }))}
        chosen={bottles.map(String)}
        onChange={(volumes) => stand(volumes.map(Number))}
      />
      <NumberField
        key={bottles.length}
        name={w.otherDeveloper}
        unit={common.units.vol}
        value={20}
        isUnset
        range={limits.developerVolume}
        onCommit={(volume) => stand([...bottles, volume])}
      />
      <p className="aside">{w.blended}</p>
    </div>
  )
}

function ScaleStep({ salon: { scaleStepG } }: { salon: SalonShelf }) {
  const w = useWords().formula.stock
  const usual = bowlFigures.scaleStepG.value
  return (
    <Choices
      legend={w.scale}
      options={scaleStepsG.map((step) => ({ value: String(step), label: w.step(step) }))}
      value={String(scaleStepG ?? usual)}
      onChange={(step) =>
        void changeSalonHere({ chapter: "formula", code: "change-scale" }, (own) => ({
          ...own,
          scaleStepG: Number(step),
        }))
      }
    />
  )
}

function PriceField({ name, price }: { name: PriceName; price: number | null }) {
  const w = useWords().formula.quote
  const set = (amount: number | null) =>
    changeSalonHere({ chapter: "formula", code: "change-price" }, (own) => ({
      ...own,
      prices: { ...own.prices, [name]: amount },
    }))
  return (
    <NumberField
      name={w.price[name]}
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
