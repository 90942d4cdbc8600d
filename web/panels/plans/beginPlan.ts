import { openInto } from "../../session/planStore"
import { sessionStore } from "../../session/sessionStore"
import { desk, freshPlan } from "./shelfActions"

/** Begins a plan: the client comes first, and the hand is ready to draw. */
export async function beginPlan(): Promise<void> {
  openInto(await freshPlan(desk))
  sessionStore.setState({ screen: "client", tool: "slice" })
}
