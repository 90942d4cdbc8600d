import { type DBSchema, type IDBPDatabase, openDB } from "idb"

/** One plan as the browser keeps it: the text of its file, and what a list of plans shows. */
export type PlanRecord = {
  id: string
  /** Different at each writing, by whichever tab. */
  rev: string
  /** When it was written, ISO 8601. */
  savedAt: string
  name: string
  initials: string
  text: string
}

/** A technique of the salon's own as the browser keeps it: the text of its file. */
export type TechniqueRecord = { id: string; text: string }

/** A service at the chair as the browser keeps it beside its plan. What is in it is the clock's business. */
export type KeptService = {
  planId: string
  /** Different at each writing, by whichever window. */
  rev: string
  /** Begun and not ended. */
  running: boolean
  value: unknown
}

interface ShelfSchema extends DBSchema {
  plans: { key: string; value: PlanRecord }
  /** Plans that could not be read, kept as they were. */
  aside: { key: string; value: unknown }
  settings: { key: string; value: unknown }
  /** Services at the chair, by the id of their plan. */
  services: { key: string; value: KeptService }
  techniques: { key: string; value: TechniqueRecord }
}

export type Database = IDBPDatabase<ShelfSchema>

/** Runs work on the open database: in the same tick once it is open, and once more when the connection was lost. */
export type Connection = { run<T>(work: (database: Database) => Promise<T>): Promise<T>; close(): void }

export function connect(name: string): Connection {
  let ready: Database | null = null
  let opening: Promise<Database> | null = null

  const forget = () => {
    ready?.close()
    ready = null
    opening = null
  }
  const open = () => {
    opening ??= openShelfDatabase(name, forget).then(
      (database) => {
        ready = database
        return database
      },
      (error) => {
        forget()
        throw error
      },
    )
    return opening
  }
  const attempt = <T>(work: (database: Database) => Promise<T>) => (ready ? work(ready) : open().then(work))

  return {
    run: (work) =>
      attempt(work).catch((error) => {
        if (!isConnectionLost(error)) throw error
        forget()
        return attempt(work)
      }),
    close: forget,
  }
}

/** Only makes the stores. Old records are lifted when they are read, never here. */
function openShelfDatabase(name: string, forget: () => void): Promise<Database> {
  return openDB<ShelfSchema>(name, 3, {
    upgrade(database, version) {
      if (version < 1) {
        database.createObjectStore("plans", { keyPath: "id" })
        database.createObjectStore("aside")
        database.createObjectStore("settings")
      }
      if (version < 2) database.createObjectStore("services", { keyPath: "planId" })
      if (version < 3) database.createObjectStore("techniques", { keyPath: "id" })
    },
    // A newer Partline in another tab waits for this one to let go.
    blocking: forget,
    terminated: forget,
  })
}

/** Phones cut the connections of a page in the background; browsers word it differently. */
const isConnectionLost = (error: unknown) =>
  error instanceof DOMException &&
  (error.name === "InvalidStateError" ||
    /connection (to .*)?(is|was)? ?(closing|closed|lost)/i.test(error.message))
