import { describe, expect, it } from "vitest"
import { absorption, roughness } from "../../presets/pigment/melanin"
import { naturalEumelanin } from "../../presets/pigment/pigmentByLevel"
import { reflectance, takenBy, takenFor } from "../../web/core/pigment/hairColour"
import { chromaOf, ciede2000, hueOf, type Lab, labOf } from "../support/cielab"

/** Sharma, Wu, Dalal 2005, "The CIEDE2000 color-difference formula", Table 1: two colours and how far apart they are. */
const published: readonly [Lab, Lab, number][] = [
  [[50, 2.6772, -79.7751], [50, 0, -82.7485], 2.0425],
  [[50, 3.1571, -77.2803], [50, 0, -82.7485], 2.8615],
  [[50, 2.8361, -74.02], [50, 0, -82.7485], 3.4412],
  [[50, -1.3802, -84.2814], [50, 0, -82.7485], 1],
  [[50, 0, 0], [50, -1, 2], 2.3669],
  [[50, 2.49, -0.001], [50, -2.49, 0.0009], 7.1792],
  [[50, 2.49, -0.001], [50, -2.49, 0.0011], 7.2195],
  [[50, -0.001, 2.49], [50, 0.0009, -2.49], 4.8045],
  [[50, 2.5, 0], [50, 0, -2.5], 4.3065],
  [[50, 2.5, 0], [73, 25, -18], 27.1492],
  [[50, 2.5, 0], [61, -5, 29], 22.8977],
  [[50, 2.5, 0], [56, -27, -3], 31.903],
  [[50, 2.5, 0], [58, 24, 15], 19.4535],
  [[60.2574, -34.0099, 36.2677], [60.4626, -34.1751, 39.4387], 1.2644],
  [[63.0109, -31.0961, -5.8663], [62.8187, -29.7946, -4.0864], 1.263],
  [[61.2901, 3.7196, -5.3901], [61.4292, 2.248, -4.962], 1.8731],
  [[35.0831, -44.1164, 3.7933], [35.0232, -40.0716, 1.5901], 1.8645],
  [[22.7233, 20.0904, -46.694], [23.0331, 14.973, -42.5619], 2.0373],
  [[36.4612, 47.858, 18.3852], [36.2715, 50.5065, 21.2231], 1.4146],
  [[90.8027, -2.0831, 1.441], [91.1528, -1.6435, 0.0447], 1.4441],
  [[6.7747, -0.2908, -2.4247], [5.8714, -0.0985, -2.2286], 0.6377],
  [[2.0776, 0.0795, -1.135], [0.9033, -0.0636, -0.5514], 0.9082],
]

describe("the measure of how far colours are apart", () => {
  it.each(published)("gives for %j and %j what was published", (one, two, apart) => {
    expect(ciede2000(one, two)).toBeCloseTo(apart, 4)
    expect(ciede2000(two, one)).toBeCloseTo(apart, 4)
  })

  it("tells chroma and hue", () => {
    expect([chromaOf([50, 3, 4]), hueOf([50, 0, 4])]).toEqual([5, 90])
    expect(labOf([1, 1, 1])[0]).toBeCloseTo(100, 6)
  })
})

describe("what a fibre takes of the light", () => {
  it("is for one unit of each pigment what d'Eon and others published in 2011", () => {
    expect(takenBy({ eumelanin: 1, pheomelanin: 0 })).toEqual([0.419, 0.697, 1.37])
    expect(takenBy({ eumelanin: 0, pheomelanin: 1 })).toEqual([0.187, 0.4, 1.05])
    expect(absorption.eumelanin.every((each, i) => each > absorption.pheomelanin[i])).toBe(true)
  })

  it("stands at the published amounts for black, brown and blond hair", () => {
    expect(naturalEumelanin.slice(0, 3).map(({ units }) => units)).toEqual([8, 1.3, 0.3])
  })

  it("follows from the colour of a mass of hair by the fit of Chiang and others 2016, and back", () => {
    const b = roughness.value
    const [red, green, blue] = [0.4, 0.25, 0.1].map(
      (c) =>
        (Math.log(c) /
          (5.969 - 0.215 * b + 2.532 * b ** 2 - 10.73 * b ** 3 + 5.574 * b ** 4 + 0.245 * b ** 5)) **
        2,
    )
    const taken = takenFor([0.4, 0.25, 0.1])
    expect(taken[0]).toBeCloseTo(red, 12)
    expect(taken[1]).toBeCloseTo(green, 12)
    expect(taken[2]).toBeCloseTo(blue, 12)
    reflectance(taken).forEach((light, i) => {
      expect(light).toBeCloseTo([0.4, 0.25, 0.1][i], 12)
    })
  })
})
