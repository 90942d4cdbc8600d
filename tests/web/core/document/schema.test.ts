import { readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { planJsonSchema } from "../../../../web/core/document/schema"

describe("the published JSON Schema", () => {
  it("is the schema of the file door: when it changes, write planJsonSchema() to the file again", () => {
    const published = readFileSync(
      new URL("../../../../web/core/file/plan.schema.json", import.meta.url),
      "utf8",
    )
    expect(JSON.parse(published)).toEqual(planJsonSchema())
  })
})
