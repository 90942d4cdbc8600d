import type { PageMessage } from "../../offline/build"
import { offlineStore } from "./offlineStore"
import { leaveWorkAlone, whenUndisturbing } from "./undisturbed"
import { isAtChair, isAtWork, onceHandIsUp, watchWork } from "./work"

const hour = 60 * 60_000

/**
 * Keeps the app on the device, and says when a newer build has been fetched. The build under a page never changes by
 * itself. Does nothing where there is no service worker: a private window, plain HTTP in a network, the dev server.
 */
export async function keepOffline(): Promise<void> {
  const { serviceWorker } = navigator
  if (!serviceWorker || !import.meta.env.PROD) return
  leaveWorkAlone(isAtWork, watchWork)
  reloadWithNewBuild(serviceWorker)
  offlineStore.setState({ kept: serviceWorker.controller ? "kept" : "keeping" })
  try {
    const registration = await serviceWorker.register("./sw.js", { updateViaCache: "none" })
    const { waiting } = registration
    if (waiting && isNewer(waiting, registration)) offer(waiting)
    registration.addEventListener("updatefound", () => watch(registration.installing, registration))
    watch(registration.installing, registration)
    if (registration.active) offlineStore.setState({ kept: "kept" })
    lookForNewer(registration)
  } catch {
    // No host, or a host without the worker: the app goes on with what it can fetch.
    offlineStore.setState(({ kept }) => ({ kept: kept === "kept" ? kept : "failed" }))
  }
}

/** The very first worker waits for a moment, too, and may keep the page by the time one hears of it. */
const isNewer = (worker: ServiceWorker, { active }: ServiceWorkerRegistration) =>
  active !== null && active !== worker

function watch(worker: ServiceWorker | null, registration: ServiceWorkerRegistration) {
  worker?.addEventListener("statechange", () => {
    if (worker.state === "installed" && isNewer(worker, registration)) offer(worker)
    if (worker.state === "activated") offlineStore.setState({ kept: "kept" })
    if (worker.state === "redundant" && !isNewer(worker, registration))
      offlineStore.setState({ kept: "failed" })
  })
}

const offer = (worker: ServiceWorker) =>
  onceHandIsUp(() => offlineStore.setState({ update: { takeOver: () => takeOver(worker) } }))

const settled = new Set<ServiceWorkerState>(["activated", "redundant"])

async function takeOver(worker: ServiceWorker) {
  const message: PageMessage = "take-over"
  const activated = new Promise<void>((done) => {
    worker.addEventListener("statechange", () => settled.has(worker.state) && done())
  })
  const wasFree = await whenUndisturbing(async () => {
    worker.postMessage(message)
    await activated
  })
  return wasFree ? "taken" : "refused"
}

/** The first worker only begins to keep this page; every later one is another build, for all windows at once. */
function reloadWithNewBuild(serviceWorker: ServiceWorkerContainer) {
  let isKept = serviceWorker.controller !== null
  serviceWorker.addEventListener("controllerchange", () => {
    if (isKept) location.reload()
    isKept = true
  })
}

function lookForNewer(registration: ServiceWorkerRegistration) {
  const look = () => {
    if (document.visibilityState === "visible" && !isAtChair()) void registration.update().catch(() => {})
  }
  setInterval(look, hour)
  document.addEventListener("visibilitychange", look)
}
