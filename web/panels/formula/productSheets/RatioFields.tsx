import { limits } from "../../../core/fields/limits"
import { useWords } from "../../../session/words"
import { NumberField } from "../../fields/NumberField"
import type { SheetPart } from "./sheetPart"

/** The thickest and the thinnest mix the tub allows. */
export function RatioFields({ draft: { ratio }, edit }: SheetPart) {
  const w = useWords().formula.productSheets
  return (
    <fieldset>
      <legend>{w.ratio}</legend>
      <div className="with-fields">
        <NumberField
          name={w.thickest}
          unit={w.parts}
          value={ratio.low}
          isUnset={ratio.low === 0}
          range={limits.sheetParts}
          step={0.25}
          onCommit={(low) => edit({ ratio: { low, high: ratio.high === 0 ? low : ratio.high } })}
        />
        <NumberField
          name={w.thinnest}
          unit={w.parts}
          value={ratio.high}
          isUnset={ratio.high === 0}
          range={limits.sheetParts}
          step={0.25}
          onCommit={(high) => edit({ ratio: { ...ratio, high } })}
        />
      </div>
    </fieldset>
  )
}
