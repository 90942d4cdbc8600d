import type { Tools } from "../tools"

export const cautions = (_: Tools) => ({
  done: {},
})

export type CautionsWords = ReturnType<typeof cautions>
