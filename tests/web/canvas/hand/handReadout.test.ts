import { describe, expect, it } from "vitest"
import { screenPoint } from "../../../../geometry/surface/frames"
import { placeReadout } from "../../../../web/canvas/hand/handReadout"

const sizes = { box: [200, 50], pane: [390, 300] } as const
const place = (x: number, y: number, more: { from?: [number, number]; pointerType?: string } = {}) =>
  placeReadout(
    {
      at: screenPoint(x, y),
      from: more.from ? screenPoint(...more.from) : null,
      pointerType: more.pointerType ?? "touch",
    },
    68,
    sizes,
  )

describe("the words beside the hand", () => {
  it("stand above a finger, clear of it", () => {
    expect(place(195, 200)).toEqual([95, 200 - 68 - 50])
  })

  it("stand on the side to which the stroke runs", () => {
    expect(place(190, 200, { from: [100, 200] })[0]).toBe(184)
    expect(place(210, 200, { from: [300, 200] })[0]).toBe(10)
  })

  it("stay on the page at its edges", () => {
    expect(place(5, 200)[0]).toBe(6)
    expect(place(388, 200)[0]).toBe(390 - 200 - 6)
  })

  it("go to the side where there is no room above, and never lie under the finger", () => {
    expect(place(60, 40)).toEqual([60 + 68, 15])
    expect(place(330, 40)).toEqual([330 - 68 - 200, 15])
  })

  it("stand below a mouse that runs down, and above a pen", () => {
    expect(place(195, 150, { from: [195, 40], pointerType: "mouse" })[1]).toBe(150 + 68)
    expect(place(195, 150, { from: [195, 40], pointerType: "pen" })[1]).toBe(150 - 68 - 50)
  })
})
