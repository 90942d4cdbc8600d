import { expect, it } from "vitest"
import { chooseLandmark, hairlineStore } from "../../../web/session/hairlineStore"

it("keeps the side that is worked on while a landmark in the middle is moved", () => {
  hairlineStore.setState({ selected: { name: "temple", side: "left" }, together: false })
  chooseLandmark({ name: "centre front", side: "right" })
  expect(hairlineStore.getState().selected).toEqual({ name: "centre front", side: "left" })
  chooseLandmark({ name: "recession", side: "right" })
  expect(hairlineStore.getState().selected).toEqual({ name: "recession", side: "right" })
})
