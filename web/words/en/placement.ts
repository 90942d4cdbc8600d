import type { Tools } from "../tools"

export const placement = (_: Tools) => ({
  done: {},
})

export type PlacementWords = ReturnType<typeof placement>
