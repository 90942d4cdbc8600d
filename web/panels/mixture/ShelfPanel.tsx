import { tradePairs } from "../../../presets/developers"
import { limits } from "../../plan/limits"
import { type PriceName, priceNames } from "../../plan/salon"
import type { SalonShelf } from "../../plan/salonRecord"
import { NumberField } from "../NumberField"
import { priceNameWords } from "./priceWords"
import { changeSalonHere, useSalon } from "./useSalon"

/** Which developers stand on the shelf, and what the salon asks for its work. Kept in this browser. */
export function ShelfPanel() {
  const { salon } = useSalon()
  return (
    <details>
      <summary>Your shelf and prices</summary>
      <div className="column salon">
        <Bottles salon={salon} />
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

function Bottles({ salon: { bottles } }: { salon: SalonShelf }) {
  const toggle = (volume: number, isThere: boolean) =>
    changeSalonHere("Change the bottles on the shelf", (own) => ({
      ...own,
      bottles: isThere
        ? [...new Set([...own.bottles, volume])].toSorted((a, b) => a - b)
        : own.bottles.filter((each) => each !== volume),
    }))
  return (
    <fieldset>
      <legend>Developers on your shelf</legend>
      <div className="choices">
        {tradePairs.map(({ volume, percent }) => (
          <label key={volume}>
            <input
              type="checkbox"
              checked={bottles.includes(volume)}
              onChange={({ target }) => void toggle(volume, target.checked)}
            />
            <span>
              {volume} vol, {percent} %
            </span>
          </label>
        ))}
      </div>
      <p className="aside">
        A strength that is not here is poured from two that are, by weight. With none marked, all are taken to
        be here.
      </p>
    </fieldset>
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
