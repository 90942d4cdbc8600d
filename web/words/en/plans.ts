import type { Tools } from "../tools"

export const plans = (_: Tools) => ({
  done: {},
})

export type PlansWords = ReturnType<typeof plans>
