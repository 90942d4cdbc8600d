import type { Tools } from "../tools"

export const chair = (_: Tools) => ({
  done: {},
})

export type ChairWords = ReturnType<typeof chair>
