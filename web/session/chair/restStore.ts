import { createStore } from "zustand/vanilla"
import type { Chair } from "../../core/chair/chair"
import { soFarOf } from "../../core/chair/chairDue"
import { type RestOfService, restOfService } from "../../core/fixes/restOfService"
import type { Service } from "../../core/schedule/scheduleInput"
import { chairStore } from "./chairStore"
import type { RestAnswer, RestQuestion } from "./restWorker"

/** The rest of the running service; null where there is none, or its plan cannot be timed. */
export type RestState = { rest: RestOfService | null }
export const restStore = createStore<RestState>(() => ({ rest: null }))

const everyMs = 20_000

/** Plans the rest anew after every tap and every third of a minute, beside the screen. */
export function followRest(service: Service): () => void {
  restStore.setState({ rest: restNow(service) })
  const asking = askBeside(service, (news) =>
    restStore.setState(({ rest }) => ({ rest: rest && { ...rest, ...news } })),
  )
  let asked: Chair | null = null
  const second = () => {
    const chair = chairStore.getState().live?.chair
    if (!chair) return
    const isTapped = asked?.log !== chair.log
    if (!isTapped && asked && thirdOf(asked) === thirdOf(chair)) return
    asked = chair
    asking.ask(chair, isTapped)
  }
  second()
  const stop = chairStore.subscribe(second)
  return () => {
    stop()
    asking.end()
    restStore.setState({ rest: null })
  }
}

const thirdOf = ({ elapsedMs }: Chair) => Math.floor(elapsedMs / everyMs)

/** A worker that answers for one service; where there can be none, the answer is worked out here. */
function askBeside(service: Service, onNews: (news: RestAnswer) => void) {
  const worker = new Worker(new URL("./restWorker.ts", import.meta.url), { type: "module" })
  const post = (question: RestQuestion) => worker.postMessage(question)
  let ask = (chair: Chair, isTapped: boolean) =>
    post(isTapped ? { soFar: soFarOf(chair) } : { nowMin: chair.elapsedMs / 60_000 })
  worker.onmessage = ({ data }: MessageEvent<RestAnswer>) => onNews(data)
  worker.onerror = () => {
    ask = (chair) => onNews(restOfService(service, soFarOf(chair)))
    const now = restNow(service)
    if (now) onNews(now)
  }
  post({ service })
  return { ask: (chair: Chair, isTapped: boolean) => ask(chair, isTapped), end: () => worker.terminate() }
}

/** Worked out at once: before the first answer, and where there is no worker to ask. */
function restNow(service: Service): RestOfService | null {
  const chair = chairStore.getState().live?.chair
  return chair ? restOfService(service, soFarOf(chair)) : null
}
