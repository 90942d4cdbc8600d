import { keepFocus } from "./panels/fields/keepFocus"
import { keepOffline } from "./session/offline/keepOffline"
import { askAfterFirstSave, readPersistence } from "./session/offline/persistence"

/** What waits until hands can draw: to keep the focus where a hand has it and the app on the device, and to ask that the plans stay on it. */
export function afterHands() {
  keepFocus(document)
  askAfterFirstSave()
  void readPersistence().catch(() => {})
  void keepOffline()
}
