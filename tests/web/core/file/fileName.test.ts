import { expect, it } from "vitest"
import { fileName } from "../../../../web/core/file/fileName"

const named = (name: string) => fileName({ name, date: "2026-03-09" }, "pdf")

it("keeps letters of any script and joins words with hyphens", () => {
  expect(named("Soft face frame, 3rd visit")).toBe("soft-face-frame-3rd-visit-2026-03-09.pdf")
  expect(named("Žofia — léto")).toBe("žofia-léto-2026-03-09.pdf")
  expect(named("髪型 A")).toBe("髪型-a-2026-03-09.pdf")
})

it("lets no name leave its folder or be empty", () => {
  expect(named("../../etc/passwd")).toBe("etc-passwd-2026-03-09.pdf")
  expect(named("  ")).toBe("plan-2026-03-09.pdf")
  expect(named("a".repeat(200))).toHaveLength(60 + "-2026-03-09.pdf".length)
})
