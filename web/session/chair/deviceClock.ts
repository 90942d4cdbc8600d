import type { Moment } from "../../core/chair/chairTime"
import { newId } from "../../core/document/newId"

/** One name for each load of the page: the monotonic clock begins anew with it. */
const load = newId()

/** Both clocks of the device, read at once. */
export const readClocks = (): Moment => ({ load, monotonicMs: performance.now(), wallMs: Date.now() })
