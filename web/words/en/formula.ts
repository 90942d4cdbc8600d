import type { Tools } from "../tools"

export const formula = (_: Tools) => ({
  done: {},
})

export type FormulaWords = ReturnType<typeof formula>
