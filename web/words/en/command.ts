import type { Tools } from "../tools"

export const command = (_: Tools) => ({
  done: {},
})

export type CommandWords = ReturnType<typeof command>
