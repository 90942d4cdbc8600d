import { createStore } from "zustand/vanilla"
import type { Fall, FallingPlan } from "./fall"

/** How the hair of the plan on the screen falls; null until it has grown. */
export const fallStore = createStore<{ fall: Fall | null }>(() => ({ fall: null }))

let worker: Worker | null = null

/** Lets the hair of a plan fall in a worker, which keeps what it has grown for the next plan like it. */
export function letFall({ head, hair, sections }: FallingPlan) {
  const plan = { head, hair, sections }
  worker ??= startWorker()
  worker.onerror = () => void fallHere(plan)
  worker.postMessage(plan)
}

const show = (fall: Fall) => fallStore.setState({ fall })

function startWorker() {
  const fresh = new Worker(new URL("./fallWorker.ts", import.meta.url), { type: "module" })
  fresh.onmessage = ({ data }: MessageEvent<Fall>) => show(data)
  return fresh
}

/** Where there is no worker to ask. */
async function fallHere(plan: FallingPlan) {
  const { fallOf } = await import("./fall")
  show(fallOf(plan))
}
