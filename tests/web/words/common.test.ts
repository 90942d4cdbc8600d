import { describe, expect, it } from "vitest"
import { landmarkNames } from "../../../geometry/scalp/hairlineLandmarks"
import type { SectionNameCode } from "../../../web/core/document/sectionNameCode"
import type { PlaceCode, Side } from "../../../web/core/placement/places"
import { say } from "../../../web/words/say"
import { en, everyLanguage } from "../../support/words"

const sides: readonly Side[] = ["left", "right", "centre"]
const places: readonly PlaceCode[] = sides.flatMap((side) => [
  ...landmarkNames.map((landmark) => ({ code: "at-landmark" as const, landmark, side })),
  { code: "behind-hairline" as const, behindMm: 62, side },
])
const names: { [C in SectionNameCode["code"]]: Extract<SectionNameCode, { code: C }> } = {
  foil: { code: "foil", number: 3 },
  panel: { code: "panel", number: 3 },
  "left-out": { code: "left-out", name: "" },
}

const broken = /undefined|NaN|\[object/

describe.each(everyLanguage)("names of %s", (_, { common }) => {
  it("tell every place, as a name and within a sentence, each differently", () => {
    for (const sentences of [common.place, common.atPlace]) {
      const said = places.map((place) => say<PlaceCode>(sentences, place))
      expect(said.filter((each) => each === "" || broken.test(each))).toEqual([])
      expect(new Set(said).size).toBe(places.length)
    }
  })

  it("tell every section by its number or that it is left out", () => {
    const said = Object.values(names).map((name) => say<SectionNameCode>(common.sectionName, name))
    expect(said.filter((each) => each === "" || broken.test(each))).toEqual([])
  })
})

describe("names in English", () => {
  it("put the side before the landmark, and leave it away in the middle", () => {
    expect(say<PlaceCode>(en.common.place, { code: "at-landmark", landmark: "temple", side: "left" })).toBe(
      "left temple",
    )
    expect(say<PlaceCode>(en.common.place, { code: "at-landmark", landmark: "ear top", side: "right" })).toBe(
      "top of the right ear",
    )
    expect(en.common.landmark({ landmark: "centre front", side: "centre" })).toBe("centre front")
  })

  it("tell a hairline point in front of the hairline as such", () => {
    const at = { landmark: "temple", side: "left", behindMm: -4, alongMm: 90 } as const
    expect(en.common.hairlinePoint.behind(at)).toBe("4 mm in front of the hairline, left temple")
  })

  it("list foils with their noun by their count", () => {
    expect(en.common.foils([3])).toBe("foil 3")
    expect(en.common.foils([3, 7, 8])).toBe("foils 3, 7 and 8")
  })
})
