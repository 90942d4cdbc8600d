import { describe, expect, it } from "vitest"
import { deviceLacks } from "../../../../web/session/chair/deviceLacks"

describe("what a device cannot do at the chair", () => {
  it("is nothing where it has sound, vibration and a screen that stays awake", () => {
    expect(deviceLacks({ hasSound: true, canVibrate: true, canStayAwake: true })).toEqual([])
  })
  it.each([
    [true, false, /cannot vibrate: leave its sound on/],
    [false, true, /no sound here: keep it where you feel/],
    [false, false, /neither sounds nor vibrates here/],
  ])("says what calls instead: sound %s, vibration %s", (hasSound, canVibrate, words) => {
    expect(deviceLacks({ hasSound, canVibrate, canStayAwake: true })).toEqual([expect.stringMatching(words)])
  })
  it("asks for a screen set to stay on where none can be held", () => {
    expect(deviceLacks({ hasSound: true, canVibrate: true, canStayAwake: false })).toEqual([
      "This device may let its screen sleep: set it to stay on for the service.",
    ])
  })
})
