import { fileStem } from "../../core/file/fileName"
import { useWords } from "../../session/words"
import { saveText } from "./savePlanToFile"
import { planTitle } from "./shelfActions"
import type { ShelfOnScreen } from "./useShelf"

/** Plans that could not be read: kept as they were written, tried again, or saved to a file each. */
export function AsideList({ shelf }: { shelf: ShelfOnScreen }) {
  const w = useWords().plans.aside
  if (shelf.aside.length === 0) return null
  return (
    <details open>
      <summary>{w.title(shelf.aside.length)}</summary>
      <p className="aside">{w.why}</p>
      <button type="button" className="button" onClick={shelf.retryAside}>
        {w.tryAgain}
      </button>
      <ul className="shelf">
        {shelf.aside.map((each) => (
          <li key={each.key}>
            <b>{planTitle(each)}</b>
            <button
              type="button"
              className="button quiet"
              aria-label={w.saveNamed(planTitle(each))}
              onClick={() => saveText(each.text, `${fileStem(each.name, "plan")}.partline.json`)}
            >
              {w.save}
            </button>
          </li>
        ))}
      </ul>
    </details>
  )
}
