import { createStore } from "zustand/vanilla"
import type { Technique } from "../../presets/techniques/technique"
import type { NotKept } from "../core/fields/notKept"
import { openTechnique, saveTechnique } from "../core/file/techniqueFile"
import { browserShelf } from "../storage/browserShelf"
import { whyNotKept } from "../storage/notKept"
import type { TechniqueRecord } from "../storage/records"
import type { Shelf } from "../storage/shelf"

/** The techniques of this browser by name, as this window last read them; how many cannot be read; why the last change was not kept. */
export const techniqueStore = createStore<TechniquesKept>(() => ({ own: [], unreadable: 0, fault: null }))
export type TechniquesKept = { own: readonly Technique[]; unreadable: number; fault: NotKept | null }

/** Reads the techniques. One that cannot be read stays where it is, for a Partline that can. */
export const readTechniques = (shelf: Shelf = browserShelf) => attempt(() => readAll(shelf))

/** Puts a technique on the shelf in the place of the one with its id. True when it is on the disk. */
export const keepTechnique = (technique: Technique, shelf: Shelf = browserShelf) =>
  attempt(async () => {
    const text = saveTechnique(technique)
    await write(shelf, (store) => store.put({ id: technique.id, text }))
    return readAll(shelf)
  })

/** Takes a technique off the shelf; the way back is to keep it again. True when it is off the disk. */
export const removeTechnique = (id: string, shelf: Shelf = browserShelf) =>
  attempt(async () => {
    await write(shelf, (store) => store.delete(id))
    return readAll(shelf)
  })

async function attempt(work: () => Promise<Omit<TechniquesKept, "fault">>): Promise<boolean> {
  try {
    techniqueStore.setState({ ...(await work()), fault: null })
    return true
  } catch (error) {
    techniqueStore.setState({ fault: whyNotKept(error, "technique") })
    return false
  }
}

async function readAll({ connection }: Shelf): Promise<Omit<TechniquesKept, "fault">> {
  const records = await connection.run((database) => database.getAll("techniques"))
  const opened = records.map(({ text }) => openTechnique(text))
  const own = opened.flatMap((each) => (each.ok ? [each.technique] : []))
  return {
    own: own.toSorted((a, b) => a.name.localeCompare(b.name)),
    unreadable: opened.length - own.length,
  }
}

type Writable = { put(record: TechniqueRecord): Promise<unknown>; delete(id: string): Promise<unknown> }

const write = ({ connection }: Shelf, change: (store: Writable) => Promise<unknown>) =>
  connection.run(async (database) => {
    const transaction = database.transaction("techniques", "readwrite", { durability: "strict" })
    await Promise.all([change(transaction.store), transaction.done])
  })
