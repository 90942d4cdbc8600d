import type { Tools } from "../tools"

export const common = (_: Tools) => ({
  done: {},
})

export type CommonWords = ReturnType<typeof common>
