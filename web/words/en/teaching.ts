import type { Tools } from "../tools"

export const teaching = (_: Tools) => ({
  done: {},
})

export type TeachingWords = ReturnType<typeof teaching>
