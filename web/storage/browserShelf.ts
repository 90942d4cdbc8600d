import { openShelf } from "./shelf"

/** The shelf of this browser. Nothing is opened until it is first asked for a plan. */
export const browserShelf = openShelf()
