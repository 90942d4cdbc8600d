import type { Tools } from "../tools"

export const record = (_: Tools) => ({
  done: {},
})

export type RecordWords = ReturnType<typeof record>
