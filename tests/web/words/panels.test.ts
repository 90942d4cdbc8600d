import { describe, expect, it } from "vitest"
import { everyLanguage } from "../../support/words"

/** What a foil is called in each language. */
const foil = /foil|folie|papel|papillote|фольг/i

const usual = {
  pace: "usual",
  people: 1,
  rinse: "each",
  bookingMin: null,
  heatMin: null,
  isDried: true,
  breaks: 0,
} as const

describe.each(everyLanguage)(
  "a plan of painted panels in %s",
  (_, { chair, timing, placement, cautions }) => {
    const sentences = (piece: "foil" | "panel" | "both") => [
      chair.start.clock(piece),
      chair.bar.nothingOn(piece),
      chair.stillOn([1, 2], piece),
      chair.floor.allOn(piece),
      chair.emergencies.about([3], piece),
      chair.floor.foilsOn(piece),
      chair.floor.noneOn(piece),
      chair.floor.tapFoil(piece),
      chair.floor.outlook({ lastOnMin: 20, rinseMin: 60 }, piece),
      timing.settings.off(piece),
      timing.settings.line({ ...usual, piece }),
      timing.figures.lastOn(piece),
      timing.figures.lastOff(piece),
      timing.table.title(piece),
      timing.table.name(piece),
      timing.table.foil(piece),
      timing.after.title(piece),
      timing.actual.name(piece),
      timing.actual.foil(piece),
      placement.foot.firstToLast(piece),
      cautions.clearance.chairHeld(piece),
      cautions.clearance.chairOpen(piece),
    ]
    it("never speaks of a foil", () => {
      expect(sentences("panel").filter((said) => foil.test(said))).toEqual([])
    })
    it("speaks of foils where there are some, alone or among panels", () => {
      expect(sentences("foil").filter((said) => foil.test(said)).length).toBeGreaterThan(10)
      expect(sentences("both").filter((said) => said.trim() === "")).toEqual([])
      expect(sentences("both").filter((said) => foil.test(said)).length).toBeGreaterThan(6)
    })
  },
)
