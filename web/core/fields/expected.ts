import type { Expected } from "./problem"

/** What a field expects, as the schema's library carries it: that library knows text alone. */
export const expected = (code: Expected): string => JSON.stringify(code)

/** What a field expected, read back; what the library says by itself carries no code. */
export function expectedOf(message: string): Expected {
  try {
    return JSON.parse(message) as Expected
  } catch {
    return { code: "something-else" }
  }
}
