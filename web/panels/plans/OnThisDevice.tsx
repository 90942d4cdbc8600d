import { useEffect, useState } from "react"
import { useStore } from "zustand"
import { offlineStore } from "../../session/offline/offlineStore"
import { askToPersist, persistenceStore, readPersistence } from "../../session/offline/persistence"
import { useWords } from "../../session/words"
import { browserShelf } from "../../storage/browserShelf"
import { readSetting } from "../../storage/shelfList"

/** What this device keeps, and how well: the app itself, the plans in the browser, the last backup. */
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
      <LastBackup />
      <p>
        <a href="./licences.txt" target="_blank" rel="noreferrer">
          {words.licences}
        </a>
      </p>
    </section>
  )
}

/** Says nothing while no backup has ever been made here. */
function LastBackup() {
  const words = useWords().offline.backup
  const [made, setMade] = useState<unknown>()
  useEffect(() => void readSetting(browserShelf, "lastBackup").then(setMade, () => {}), [])
  if (typeof made !== "string" || Number.isNaN(Date.parse(made))) return null
  const days = Math.floor((Date.now() - Date.parse(made)) / 86_400_000)
  return <p>{days < 1 ? words.today : words.days({ days })}</p>
}
