import type { Tools } from "../tools"

export const techniques = (_: Tools) => ({
  done: {},
})

export type TechniquesWords = ReturnType<typeof techniques>
