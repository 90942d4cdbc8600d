import { type IDBPDatabase, openDB } from "idb"

/** Runs work on the open database: in the same tick once it is open, and once more when the connection was lost. */
export type Connection<D> = {
  run<T>(work: (database: D) => Promise<T>): Promise<T>
  /** What a database that cannot be opened to write in still shows: plans as they are, by a store's name. */
  look(store: string): Promise<readonly unknown[]>
  close(): void
}

type Hooks = { blocked(): void; blocking(): void; terminated(): void }

/** How long another window may keep a newer shelf from being made before it is said, ms. */
const patienceMs = 1000

export function connectTo<D extends { close(): void }>(
  name: string,
  version: number,
  open: (hooks: Hooks) => Promise<D>,
): Connection<D> {
  let ready: D | null = null
  let opening: Promise<D> | null = null
  /** Read before a newer shelf is made of it, which another window may prevent. */
  let before: ReadonlyMap<string, readonly unknown[]> = new Map()

  const forget = () => {
    ready?.close()
    ready = null
    opening = null
  }
  const openOnce = () => {
    opening ??= openPatiently(open, forget).then(
      (database) => {
        ready = database
        before = new Map()
        return database
      },
      (error) => {
        forget()
        throw error
      },
    )
    return opening
  }
  const begin = async () => {
    const found = await versionOf(name)
    if (found !== null && found < version) before = await readAll(name)
    return openOnce()
  }
  const attempt = <T>(work: (database: D) => Promise<T>) =>
    ready ? work(ready) : (opening ?? begin()).then(work)

  return {
    run: (work) =>
      attempt(work).catch((error) => {
        if (!isConnectionLost(error)) throw error
        forget()
        return attempt(work)
      }),
    look: async (store) => before.get(store) ?? (await readAll(name)).get(store) ?? [],
    close: forget,
  }
}

/** A window that holds an older shelf open keeps a newer one from being made: that is said, and waited for. */
function openPatiently<D>(open: (hooks: Hooks) => Promise<D>, forget: () => void): Promise<D> {
  return new Promise((done, fail) => {
    const blocked = () =>
      setTimeout(() => fail(new DOMException("held by another window", "BlockedError")), patienceMs)
    open({ blocked: () => void blocked(), blocking: forget, terminated: forget }).then(done, fail)
  })
}

/** The version of a database that there is; null where there is none, or the browser does not tell. */
async function versionOf(name: string): Promise<number | null> {
  const all = await indexedDB.databases?.()
  return all?.find((each) => each.name === name)?.version ?? null
}

/** All that a database of any version holds in the stores a list is made of. */
async function readAll(name: string): Promise<ReadonlyMap<string, readonly unknown[]>> {
  const database: IDBPDatabase = await openDB(name)
  const stores = ["plans"].filter((store) => database.objectStoreNames.contains(store))
  const rows = await Promise.all(stores.map(async (store) => [store, await database.getAll(store)] as const))
  database.close()
  return new Map(rows)
}

/** Phones cut the connections of a page in the background; browsers word it differently. */
const isConnectionLost = (error: unknown) =>
  error instanceof DOMException &&
  (error.name === "InvalidStateError" ||
    /connection (to .*)?(is|was)? ?(closing|closed|lost)/i.test(error.message))
