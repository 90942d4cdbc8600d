import { limits } from "../../../core/fields/limits"
import { useWords } from "../../../session/words"
import { NumberField } from "../../fields/NumberField"
import type { SheetPart } from "./sheetPart"

/** What a tub costs, in the salon's own money, and how much is in it. */
export function PriceFields({ draft: { price }, edit }: SheetPart) {
  const { common, formula } = useWords()
  const w = formula.productSheets
  return (
    <div className="with-fields">
      <NumberField
        name={w.price}
        unit=""
        value={price?.amount ?? 0}
        isUnset={price === null}
        range={limits.price}
        onClear={() => edit({ price: null })}
        onCommit={(amount) => edit({ price: { amount, forG: price?.forG ?? 500 } })}
      />
      <NumberField
        name={w.priceFor}
        unit={common.units.g}
        value={price?.forG ?? 500}
        range={limits.priceForG}
        onCommit={(forG) => edit({ price: { amount: price?.amount ?? 0, forG } })}
      />
    </div>
  )
}
