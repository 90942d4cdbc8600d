import type { Now } from "../core/text/zonedTime"

/** This moment, where this clock hangs. */
export const nowHere = (): Now => ({
  moment: new Date().toISOString(),
  zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
})
