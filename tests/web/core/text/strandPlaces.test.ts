import { describe, expect, it } from "vitest"
import type { HairState } from "../../../../web/core/document/consultation"
import { hairRuns } from "../../../../web/core/text/hairRuns"
import { changeStrand, commonState } from "../../../../web/core/text/strandPlaces"
import { en } from "../../../support/words"

const hairWords = (hair: Parameters<typeof hairRuns>[0]) => hairRuns(hair).map(en.client.hair.line)
const allOver = { zone: "all", part: "all" } as const
const setTo = (change: Partial<HairState>) => (state: HairState) => ({ ...state, ...change })
const sixAllOver = changeStrand({}, allOver, setTo({ level: 6, history: [] }))

describe("hair written down by place", () => {
  it("is said at once for all zones from root to ends", () => {
    expect(Object.keys(sixAllOver)).toHaveLength(5)
    expect(commonState(sixAllOver, allOver)).toEqual({ level: 6, history: [], porosity: null, stretch: null })
    expect(hairWords(sixAllOver)).toEqual(["All over: root to ends level 6, never treated."])
  })

  it("is open for a place whose parts differ, and each keeps what else is known of it", () => {
    const lightened = changeStrand(
      sixAllOver,
      { zone: "all", part: "ends" },
      setTo({ level: 8, history: ["lightened"] }),
    )
    expect(commonState(lightened, allOver)).toMatchObject({ level: null, history: null })
    expect(commonState(lightened, { zone: "top", part: "roots" })).toMatchObject({ level: 6, history: [] })
    const porousHairline = changeStrand(
      lightened,
      { zone: "hairline", part: "all" },
      setTo({ porosity: "high" }),
    )
    expect(porousHairline.hairline?.ends).toMatchObject({ level: 8, porosity: "high" })
    expect(hairWords(porousHairline)).toEqual([
      "Hairline: roots and mid-lengths level 6, never treated, high porosity; ends level 8, lightened, high porosity.",
      "Top, left side, right side and back: roots and mid-lengths level 6, never treated; ends level 8, lightened.",
    ])
  })

  it("says nothing of what was taken back", () => {
    const taken = changeStrand(sixAllOver, allOver, setTo({ level: null, history: null }))
    expect(hairWords(taken)).toEqual([])
  })
})
