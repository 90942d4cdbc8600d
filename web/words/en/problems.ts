import type { Tools } from "../tools"

export const problems = (_: Tools) => ({
  done: {},
})

export type ProblemsWords = ReturnType<typeof problems>
