import type { Tools } from "../tools"

export const sheets = (_: Tools) => ({
  done: {},
})

export type SheetsWords = ReturnType<typeof sheets>
