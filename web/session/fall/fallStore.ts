import { createStore } from "zustand/vanilla"
import type { Fall, FallingPlan } from "../../core/fall/fall"
import type { FallNews, FallQuestion } from "./fallWorker"

/** How the hair on the screen falls, null until it has grown; and whether that is the hair of the plan last asked for. */
export const fallStore = createStore<{ fall: Fall | null; isOfPlan: boolean }>(() => ({
  fall: null,
  isOfPlan: false,
}))

let worker: Worker | null = null
let asked: FallQuestion = { number: 0, plan: null }

/** Lets the hair of a plan fall in a worker, which keeps what it has grown for the next plan like it. */
export function letFall({ head, hair, sections, front = "cheek" }: FallingPlan) {
  const before = asked.plan
  const isSameHair = before?.head === head && before.hair === hair && before.front === front
  if (isSameHair && before.sections === sections) return
  asked = { number: asked.number + 1, plan: { head, hair, sections, front } }
  fallStore.setState(isSameHair ? { isOfPlan: false } : { fall: null, isOfPlan: false })
  worker ??= startWorker()
  worker.postMessage(asked)
}

function startWorker() {
  const fresh = new Worker(new URL("./fallWorker.ts", import.meta.url), { type: "module" })
  fresh.onmessage = ({ data: { number, fall } }: MessageEvent<FallNews>) => {
    if (number === asked.number) show(fall)
  }
  fresh.onerror = () => void fallHere(asked)
  return fresh
}

const show = (fall: Fall) => fallStore.setState({ fall, isOfPlan: true })

/** Where there is no worker to ask. */
async function fallHere({ plan }: FallQuestion) {
  const { fallOf } = await import("../../core/fall/fall")
  if (plan) show(fallOf(plan))
}
