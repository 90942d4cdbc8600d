import { type RestOfService, restOfService } from "../../service/restOfService"
import type { Service, SoFar } from "../../service/scheduleInput"

/** Plans the rest of a service beside the screen, which goes on answering. The service is sent once, what has happened each time. */
export type RestQuestion = { service: Service } | { soFar: SoFar }
export type RestAnswer = RestOfService

let service: Service | null = null

self.onmessage = ({ data }: MessageEvent<RestQuestion>) => {
  if ("service" in data) service = data.service
  else if (service) self.postMessage(restOfService(service, data.soFar) satisfies RestAnswer)
}
