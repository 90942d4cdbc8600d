import { addressOf, type Build, cacheName, isBuildCache, isHashed } from "./build"

/** What the worker keeps files with. */
export type Store = { caches: CacheStorage; fetch: typeof fetch; base: URL }

const atOnce = 6

/**
 * Takes every file of a build, each checked against its hash before it is kept. Throws when one is missing or is of another
 * build: a host half way between two builds installs neither. What was kept until then is right and stays for the next try.
 */
export async function keepBuild(build: Build, store: Store): Promise<void> {
  const cache = await store.caches.open(cacheName(build))
  const waiting = [...build.files]
  const takeInTurn = async () => {
    for (let file = waiting.shift(); file; file = waiting.shift()) {
      const [path, hash] = file
      const address = addressOf(path, store.base)
      if (!(await cache.match(address))) await cache.put(address, await checkedAnswer(path, hash, store))
    }
  }
  await Promise.all(Array.from({ length: atOnce }, takeInTurn))
}

/** The file from an older build, from the browser's own cache or from the host: the first that has the right bytes. */
async function checkedAnswer(path: string, hash: string, store: Store): Promise<Response> {
  const address = addressOf(path, store.base)
  const fresh = () => store.fetch(address, { cache: "reload", credentials: "same-origin" })
  const sources = isHashed(path)
    ? [() => keptByOlder(address, store), () => store.fetch(address, { credentials: "same-origin" }), fresh]
    : [fresh]
  for (const source of sources) {
    const answer = await source()
    if (answer?.ok && !answer.redirected && (await sha256(answer.clone())) === hash) return answer
  }
  throw new Error(`${path} is missing or of another build`)
}

async function keptByOlder(address: URL, { caches }: Store): Promise<Response | undefined> {
  for (const name of (await caches.keys()).filter(isBuildCache)) {
    const kept = await (await caches.open(name)).match(address)
    if (kept) return kept
  }
}

const sha256 = async (answer: Response) =>
  btoa(
    String.fromCharCode(...new Uint8Array(await crypto.subtle.digest("SHA-256", await answer.arrayBuffer()))),
  )

/** Deletes what older builds have kept; called when no page of theirs is left. */
export async function dropOlder(build: Build, { caches }: Pick<Store, "caches">): Promise<void> {
  const others = (await caches.keys()).filter((name) => isBuildCache(name) && name !== cacheName(build))
  await Promise.all(others.map((name) => caches.delete(name)))
}
