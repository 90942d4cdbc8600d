import "./updateOffer.css"
import { useState, useSyncExternalStore } from "react"
import { useStore } from "zustand"
import { offlineStore, type Update } from "../../session/offline/offlineStore"
import { isAtChair, watchWork } from "../../session/offline/work"
import { useWords } from "../../session/words"

/** Offers a newer version where one has been fetched; nobody at the chair is asked. */
export function UpdateOffer() {
  const update = useStore(offlineStore, (offline) => offline.update)
  const atChair = useSyncExternalStore(watchWork, isAtChair)
  const [putOff, setPutOff] = useState<Update | null>(null)
  if (!update || atChair || putOff === update) return null
  return <Offer update={update} onLater={() => setPutOff(update)} />
}

function Offer({ update, onLater }: { update: Update; onLater: () => void }) {
  const words = useWords().offline.update
  const [refused, setRefused] = useState(false)
  const load = async () => setRefused((await update.takeOver()) === "refused")
  return (
    <div className="update-offer">
      <output>{refused ? words.refused : words.ready}</output>
      <button type="button" className="button" onClick={() => void load()}>
        {words.load}
      </button>
      <button type="button" className="button quiet" onClick={onLater}>
        {words.later}
      </button>
    </div>
  )
}
