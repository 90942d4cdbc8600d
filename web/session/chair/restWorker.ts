import { newsSince, type RestOfService, restOfService } from "../../core/fixes/restOfService"
import type { Service, SoFar } from "../../core/schedule/scheduleInput"

/** Plans the rest of a service beside the screen. The service is sent once, what has happened after each tap, else the minute alone. */
export type RestQuestion = { service: Service } | { soFar: SoFar } | { nowMin: number }
/** Only what is not as in the answer before. */
export type RestAnswer = Partial<RestOfService>

let service: Service | null = null
let soFar: SoFar | null = null
let told: RestOfService | null = null

self.onmessage = ({ data }: MessageEvent<RestQuestion>) => {
  if ("service" in data) service = data.service
  else if ("soFar" in data) soFar = data.soFar
  else if (soFar) soFar = { ...soFar, nowMin: data.nowMin }
  if (service && soFar) tell(restOfService(service, soFar))
}

function tell(rest: RestOfService) {
  self.postMessage(newsSince(told, rest) satisfies RestAnswer)
  told = rest
}
