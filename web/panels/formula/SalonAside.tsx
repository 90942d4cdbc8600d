import { useEffect, useState } from "react"
import { listSalonAside, retrySalonAside } from "../../session/salon/salonAside"
import { saveFile } from "../../session/saveFile"
import { useWords } from "../../session/words"

/** What of the salon's things could not be read: kept as it was written, tried again, or saved to a file. */
export function SalonAside() {
  const { formula, plans } = useWords()
  const [aside, setAside] = useState<readonly unknown[]>([])
  useEffect(() => void listSalonAside().then(setAside, () => {}), [])
  if (aside.length === 0) return null
  return (
    <div className="column-tight">
      <p className="fault">{formula.stock.aside(aside.length)}</p>
      <div className="actions">
        <button
          type="button"
          className="button"
          onClick={() => void retrySalonAside().then(setAside, () => {})}
        >
          {plans.aside.tryAgain}
        </button>
        <button
          type="button"
          className="button"
          onClick={() =>
            void saveFile(JSON.stringify(aside, null, 1), "partline-salon-aside.json", "application/json")
          }
        >
          {plans.aside.save}
        </button>
      </div>
    </div>
  )
}
