import type { Tools } from "../tools"

export const client = (_: Tools) => ({
  /** What undo calls a change of this chapter. */
  done: {
    answer: "Answer a question",
  },
})

export type ClientWords = ReturnType<typeof client>
