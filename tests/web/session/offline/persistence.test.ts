import { expect, it } from "vitest"
import { createStore } from "zustand/vanilla"
import {
  askAfterFirstSave,
  askToPersist,
  persistenceStore,
  readPersistence,
} from "../../../../web/session/offline/persistence"
import type { SaveStatus } from "../../../../web/session/saveStatus"

const storage = (persisted: boolean, persists = persisted) =>
  ({ persisted: async () => persisted, persist: async () => persists }) as StorageManager

it("asks once, after the first change that is on the disk", () => {
  const status = createStore<SaveStatus>(() => ({ state: "saving" }))
  let asked = 0
  askAfterFirstSave(status, async () => {
    asked += 1
  })
  status.setState({ state: "not-saved", why: { code: "removed-elsewhere" } }, true)
  expect(asked).toBe(0)
  status.setState({ state: "saved" }, true)
  status.setState({ state: "saving" }, true)
  status.setState({ state: "saved" }, true)
  expect(asked).toBe(1)
})

it("tells the browser’s answer, and that there is none where it does not say", async () => {
  await readPersistence({} as StorageManager)
  expect(persistenceStore.getState().answer).toBe("unknown")
  await askToPersist(storage(false))
  expect(persistenceStore.getState().answer).toBe("refused")
  await askToPersist(storage(false, true))
  expect(persistenceStore.getState().answer).toBe("granted")
  await readPersistence(storage(false))
  expect(persistenceStore.getState().answer).toBe("refused")
})
