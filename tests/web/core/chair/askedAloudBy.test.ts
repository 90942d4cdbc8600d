import { expect, it } from "vitest"
import { askedAloudBy } from "../../../../web/core/chair/askedAloudBy"
import { newConsultation } from "../../../../web/core/document/consultation"

const now = { moment: "2026-03-09T10:00:00Z", zone: "Europe/London" }
const signedAt = (...moments: readonly string[]) => ({
  consultation: {
    ...newConsultation(),
    signatures: moments.map((at, i) => ({ by: `colourist ${i + 1}`, at, questions: [] })),
  },
})

it("names who signed last today", () => {
  expect(askedAloudBy(signedAt("2026-03-09T08:00:00Z", "2026-03-09T09:00:00Z"), now)).toBe("colourist 2")
})

it("takes no signature of an earlier visit for one of this", () => {
  expect(askedAloudBy(signedAt("2026-01-12T09:00:00Z"), now)).toBeNull()
  expect(askedAloudBy(signedAt(), now)).toBeNull()
  expect(askedAloudBy({}, now)).toBeNull()
})

it("goes by the day of the salon's clock", () => {
  const night = { moment: "2026-03-08T23:30:00Z", zone: "Pacific/Auckland" }
  expect(askedAloudBy(signedAt("2026-03-08T10:30:00Z"), night)).toBeNull()
  expect(askedAloudBy(signedAt("2026-03-08T11:30:00Z"), night)).toBe("colourist 1")
})
