import { sessionStore } from "../../session/sessionStore"

const [lowest, highest] = [-0.6, 1.4]

/** Walk the viewer round the head. */
export function turnBy(yaw: number, pitch: number) {
  sessionStore.setState((session) => ({
    yaw: session.yaw + yaw,
    pitch: Math.max(lowest, Math.min(highest, session.pitch + pitch)),
  }))
}
