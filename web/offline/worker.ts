import type { Build, PageMessage } from "./build"
import { cacheName } from "./build"
import { dropOlder, keepBuild, type Store } from "./keepBuild"
import { keptFile } from "./keptFile"

/** The worker that keeps one build of the app on the device. The build writes itself in: see offlineWorker.ts. */
declare const PARTLINE_BUILD: Build

type Waiting = Event & { waitUntil(work: Promise<unknown>): void }
type Asking = Event & { request: Request; respondWith(answer: Promise<Response>): void }

/** What a service worker's own scope has and the library of pages does not know. */
declare const self: {
  registration: ServiceWorkerRegistration
  clients: { claim(): Promise<void> }
  skipWaiting(): Promise<void>
  addEventListener(name: "install" | "activate", on: (event: Waiting) => void): void
  addEventListener(name: "message", on: (event: Waiting & { data: PageMessage }) => void): void
  addEventListener(name: "fetch", on: (event: Asking) => void): void
}

const build = PARTLINE_BUILD
const store: Store = { caches, fetch: (...asked) => fetch(...asked), base: new URL(self.registration.scope) }

self.addEventListener("install", (event) => event.waitUntil(keepBuild(build, store)))

self.addEventListener("activate", (event) =>
  event.waitUntil(dropOlder(build, store).then(() => self.clients.claim())),
)

// A newer build waits until the last page of the older one is gone, or until someone asks for it.
self.addEventListener("message", (event) => {
  if (event.data === "take-over") event.waitUntil(self.skipWaiting())
})

self.addEventListener("fetch", (event) => {
  const address = keptFile(event.request, build, store.base)
  if (address) event.respondWith(keptOrFetched(address, event.request))
})

async function keptOrFetched(address: URL, request: Request): Promise<Response> {
  const cache = await caches.open(cacheName(build))
  return (await cache.match(address, { ignoreVary: true })) ?? fetch(request)
}
