import { useEffect, useRef, useState } from "react"
import { soFarOf } from "../../service/chairDue"
import { type RestOfService, restOfService, withNews } from "../../service/restOfService"
import type { Service } from "../../service/scheduleInput"
import type { TimedPlan } from "../../service/timedPlan"
import { chairStore } from "./chairStore"
import type { RestAnswer, RestQuestion } from "./restWorker"
import { useChair } from "./useChair"

const everyMs = 20_000

/** The rest of the service as it stands after the last tap, and again every 20 seconds; null where the plan cannot be timed. */
export function useRest(timed: TimedPlan): RestOfService | null {
  const service = timed.ok ? timed.service : null
  const log = useChair(({ live }) => live?.chair.log)
  const third = useChair(({ live }) => Math.floor((live?.chair.elapsedMs ?? 0) / everyMs))
  const [rest, setRest] = useState(() => restNow(service))
  const ask = useRef<((question: RestQuestion) => void) | null>(null)
  useEffect(() => {
    if (!service) return setRest(null)
    const worker = new Worker(new URL("./restWorker.ts", import.meta.url), { type: "module" })
    worker.onmessage = ({ data }: MessageEvent<RestAnswer>) => setRest((before) => withNews(before, data))
    worker.onerror = () => {
      ask.current = () => setRest(restNow(service))
      ask.current({ service })
    }
    ask.current = (question) => worker.postMessage(question)
    ask.current({ service })
    return () => worker.terminate()
  }, [service])
  // biome-ignore lint/correctness/useExhaustiveDependencies: a tap or a third of a minute is what asks again
  useEffect(() => {
    const chair = chairStore.getState().live?.chair
    if (service && chair) ask.current?.({ soFar: soFarOf(chair) })
  }, [service, log, third])
  return rest
}

/** Worked out at once: before the first answer, and where there is no worker to ask. */
function restNow(service: Service | null): RestOfService | null {
  const chair = chairStore.getState().live?.chair
  return service && chair ? restOfService(service, soFarOf(chair)) : null
}
