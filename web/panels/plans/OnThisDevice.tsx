import { useEffect } from "react"
import { useStore } from "zustand"
import { offlineStore } from "../../session/offline/offlineStore"
import { askToPersist, persistenceStore, readPersistence } from "../../session/offline/persistence"
import { useWords } from "../../session/words"

/** What this device keeps, and how well: the app itself and the plans in the browser. */
export function OnThisDevice() {
  const words = useWords().offline
  const kept = useStore(offlineStore, (offline) => offline.kept)
  const answer = useStore(persistenceStore, (persistence) => persistence.answer)
  useEffect(() => void readPersistence().catch(() => {}), [])
  return (
    <section aria-labelledby="on-this-device">
      <h3 id="on-this-device">{words.kept.title}</h3>
      <p>{words.kept[kept]}</p>
      <p>
        {words.persistence[answer]}{" "}
        {answer === "refused" && (
          <button type="button" className="button" onClick={() => void askToPersist()}>
            {words.persistence.ask}
          </button>
        )}
      </p>
      <p>
        <a href="./licences.txt" target="_blank" rel="noreferrer">
          {words.licences}
        </a>
      </p>
    </section>
  )
}
