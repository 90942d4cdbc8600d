import { describe, expect, test } from "vitest"
import { tradePairs } from "../../../../presets/formula/developers"
import {
  densityGPerMl,
  isOverLegalLimit,
  labelPercent,
  labelVolume,
  onHeadPercent,
  percentWvToVolume,
  percentWvToWw,
  percentWwToVolume,
  percentWwToWv,
  volumeToPercentWv,
  volumeToPercentWw,
} from "../../../../web/core/mixing/strength"

describe("volume and per cent", () => {
  // 1 L of V volume gives V L of oxygen = V / 22.414 mol, from twice as many mol of 34.0147 g.
  test.each([
    [10, 3.035, 3.01],
    [20, 6.07, 5.95],
    [30, 9.105, 8.83],
    [40, 12.141, 11.66],
  ])("%d volume is %d per cent w/v and %d per cent w/w", (volume, percentWv, percentWw) => {
    expect(volumeToPercentWv(volume)).toBeCloseTo(percentWv, 3)
    expect(Math.abs(volumeToPercentWw(volume) - percentWw)).toBeLessThan(0.006)
  })

  test("a general chemistry text: 30 volume is 2.678 mol/L, 9.11 % w/v with 22.4 L/mol", () => {
    expect((volumeToPercentWv(30) * 10) / 34.0147).toBeCloseTo(2.678, 2)
    expect(volumeToPercentWv(30)).toBeCloseTo(9.11, 2)
  })

  // % w/w times density is % w/v; that over 0.30351 is the volume.
  test.each([
    [3, 3.03, 9.98],
    [6, 6.12, 20.2],
    [9, 9.28, 30.6],
    [12, 12.5, 41.2],
    [27, 29.7, 97.9],
    [30, 33.4, 109.9],
    [35, 39.6, 130.6],
  ])("%d per cent w/w is %d per cent w/v, %d volume", (percentWw, percentWv, volume) => {
    expect(Math.abs(percentWwToWv(percentWw) / percentWv - 1)).toBeLessThan(0.002)
    expect(Math.abs(percentWwToVolume(percentWw) / volume - 1)).toBeLessThan(0.002)
  })

  test("there and back", () => {
    for (const percent of [0, 0.4, 2.9, 7.3, 12, 19, 33, 41]) {
      expect(percentWvToWw(percentWwToWv(percent))).toBeCloseTo(percent, 10)
      expect(volumeToPercentWv(percentWvToVolume(percent))).toBeCloseTo(percent, 12)
    }
  })
})

describe("what pharmacopoeias and labels say", () => {
  test("USP Hydrogen Peroxide Topical Solution, 2.5 to 3.5 g in 100 mL, holds 10 volume", () => {
    expect(percentWvToVolume(2.5)).toBeLessThan(10)
    expect(percentWvToVolume(3.5)).toBeGreaterThan(10)
  })

  test("UK product characteristics 2022: 6 % BP, 20 volume, is 15.0 % v/v of 35 % w/w", () => {
    const percentWv = 15 * 0.35 * densityGPerMl(35)
    expect(percentWv).toBeCloseTo(5.95, 2)
    expect(percentWvToVolume(percentWv)).toBeCloseTo(19.6, 1)
  })

  test("27 % BP, 26 to 28 % w/w, is labelled 100 volume; Ph. Eur. 29 to 31 % is 110 volume", () => {
    expect(percentWwToVolume(26)).toBeLessThan(100)
    expect(percentWwToVolume(28)).toBeGreaterThan(100)
    expect(percentWwToVolume(29)).toBeLessThan(110)
    expect(percentWwToVolume(31)).toBeGreaterThan(110)
  })

  test("the trade pair is at most 3 % off the exact strength", () => {
    for (const { volume, percent } of tradePairs) {
      expect(labelPercent(volume)).toBeCloseTo(percent, 12)
      expect(labelVolume(percent)).toBeCloseTo(volume, 12)
      expect(Math.abs(volumeToPercentWw(volume) / percent - 1)).toBeLessThan(0.03)
    }
  })
})

describe("strength on the head", () => {
  test.each([
    [9, 1, 2, 6],
    [12, 1, 2, 8],
    [12, 1, 1, 6],
    [6, 1, 1.5, 3.6],
    [6, 1, 3, 4.5],
  ])("%d per cent at %d : %d is %d per cent", (percent, lightener, developer, onHead) => {
    expect(onHeadPercent(percent, { lightener, developer })).toBeCloseTo(onHead, 12)
  })

  test("12 % is lawful, above is not, a rounding error is not above", () => {
    expect(isOverLegalLimit(12)).toBe(false)
    expect(isOverLegalLimit(4 * 3.0000000000000004)).toBe(false)
    expect(isOverLegalLimit(12.01)).toBe(true)
    expect(isOverLegalLimit(onHeadPercent(12, { lightener: 1, developer: 3 }))).toBe(false)
    expect(isOverLegalLimit(onHeadPercent(18, { lightener: 1, developer: 3 }))).toBe(true)
  })
})
