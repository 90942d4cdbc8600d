import type { Tools } from "../tools"

export const timing = (_: Tools) => ({
  done: {},
})

export type TimingWords = ReturnType<typeof timing>
