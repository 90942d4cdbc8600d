import { useEffect, useState } from "react"
import type { Chair } from "../../service/chairClock"
import { soFarOf } from "../../service/chairDue"
import { type RestOfService, restOfService, withNews } from "../../service/restOfService"
import type { Service } from "../../service/scheduleInput"
import type { TimedPlan } from "../../service/timedPlan"
import { chairStore } from "./chairStore"
import type { RestAnswer, RestQuestion } from "./restWorker"

const everyMs = 20_000

/** The rest of the service as it stands after the last tap, and again every 20 seconds; null where the plan cannot be timed. */
export function useRest(timed: TimedPlan): RestOfService | null {
  const service = timed.ok ? timed.service : null
  const [rest, setRest] = useState(() => restNow(service))
  useEffect(() => {
    if (!service) return setRest(null)
    return followRest(service, (news) => setRest((before) => withNews(before, news)))
  }, [service])
  return rest
}

/** Asks after every tap and every third of a minute, beside the screen: a second that asks draws nothing for it. */
function followRest(service: Service, onNews: (rest: RestOfService) => void): () => void {
  const worker = new Worker(new URL("./restWorker.ts", import.meta.url), { type: "module" })
  let ask = (question: RestQuestion) => worker.postMessage(question)
  worker.onmessage = ({ data }: MessageEvent<RestAnswer>) => onNews(data)
  worker.onerror = () => {
    ask = () => {
      const rest = restNow(service)
      if (rest) onNews(rest)
    }
    ask({ service })
  }
  ask({ service })
  let asked: Chair | null = null
  const askAnew = () => {
    const chair = chairStore.getState().live?.chair
    if (!chair || (asked?.log === chair.log && thirdOf(asked) === thirdOf(chair))) return
    asked = chair
    ask({ soFar: soFarOf(chair) })
  }
  askAnew()
  const stop = chairStore.subscribe(askAnew)
  return () => {
    stop()
    worker.terminate()
  }
}

const thirdOf = ({ elapsedMs }: Chair) => Math.floor(elapsedMs / everyMs)

/** Worked out at once: before the first answer, and where there is no worker to ask. */
function restNow(service: Service | null): RestOfService | null {
  const chair = chairStore.getState().live?.chair
  return service && chair ? restOfService(service, soFarOf(chair)) : null
}
