import "./productSheets.css"
import { useState } from "react"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import type { ProductSheet } from "../../../../presets/formula/productSheet"
import type { SalonShelf } from "../../../core/weighing/salonRecord"
import { changeSalonHere, useSalon } from "../../../session/salon/useSalon"
import { useWords } from "../../../session/words"
import { SelectField } from "../../fields/SelectField"
import { newSheet } from "./newSheet"
import { SheetEditor } from "./SheetEditor"

const patterns = houseProducts.map(({ id, name }) => ({ value: id, label: name }))

/** The salon's own product sheets, typed in from what is printed on its tubs. Kept in this browser. */
export function SheetsPanel() {
  const w = useWords().formula.productSheets
  const { salon } = useSalon()
  const [draft, edit] = useState<ProductSheet | null>(null)
  const keep = (sheet: ProductSheet) => {
    void changeSalonHere({ chapter: "formula", code: "save-sheet", product: sheet.name }, (own) => ({
      ...own,
      sheets: withSheet(own, sheet),
    }))
    edit(null)
  }
  const remove = ({ id, name }: ProductSheet) => {
    void changeSalonHere({ chapter: "formula", code: "remove-sheet", product: name }, (own) => ({
      ...own,
      sheets: own.sheets.filter((sheet) => sheet.id !== id),
    }))
    edit(null)
  }
  return (
    <details>
      <summary>{w.title}</summary>
      <div className="column salon">
        {salon.sheets.length > 0 && (
          <ul className="actions" aria-label={w.saved}>
            {salon.sheets.map((sheet) => (
              <li key={sheet.id}>
                <button type="button" className="button" onClick={() => edit(sheet)}>
                  {sheet.name}
                </button>
              </li>
            ))}
          </ul>
        )}
        {draft ? (
          <SheetEditor
            key={draft.id}
            sheet={draft}
            others={salon.sheets.filter(({ id }) => id !== draft.id).map(({ name }) => name)}
            onKeep={keep}
            onLeave={() => edit(null)}
            onRemove={salon.sheets.some(({ id }) => id === draft.id) ? () => remove(draft) : null}
          />
        ) : (
          <BeginSheet onBegin={edit} />
        )}
      </div>
    </details>
  )
}

function BeginSheet({ onBegin }: { onBegin: (sheet: ProductSheet) => void }) {
  const w = useWords().formula.productSheets
  const begin = (id: string | null) => {
    const pattern = houseProducts.find((sheet) => sheet.id === id)
    if (pattern) onBegin({ ...pattern, id: newSheet().id, name: "" })
  }
  return (
    <div className="with-fields">
      <button type="button" className="button" onClick={() => onBegin(newSheet())}>
        {w.add}
      </button>
      <SelectField
        name={w.fromInvented}
        options={patterns}
        value={null}
        onChange={begin}
        empty={w.chooseOne}
      />
    </div>
  )
}

const withSheet = ({ sheets }: SalonShelf, sheet: ProductSheet) =>
  sheets.some(({ id }) => id === sheet.id)
    ? sheets.map((each) => (each.id === sheet.id ? sheet : each))
    : [...sheets, sheet]
