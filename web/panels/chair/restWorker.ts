import { newsSince, type RestOfService, restOfService } from "../../service/restOfService"
import type { Service, SoFar } from "../../service/scheduleInput"

/** Plans the rest of a service beside the screen, which goes on answering. The service is sent once, what has happened each time. */
export type RestQuestion = { service: Service } | { soFar: SoFar }
/** Only what is not as in the answer before. */
export type RestAnswer = Partial<RestOfService>

let service: Service | null = null
let told: RestOfService | null = null

self.onmessage = ({ data }: MessageEvent<RestQuestion>) => {
  if ("service" in data) service = data.service
  else if (service) tell(restOfService(service, data.soFar))
}

function tell(rest: RestOfService) {
  self.postMessage(newsSince(told, rest) satisfies RestAnswer)
  told = rest
}
