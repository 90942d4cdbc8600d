import type { Tools } from "../tools"

export const weighing = (_: Tools) => ({
  done: {},
})

export type WeighingWords = ReturnType<typeof weighing>
