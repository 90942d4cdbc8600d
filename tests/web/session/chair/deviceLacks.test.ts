import { describe, expect, it } from "vitest"
import { deviceLacks } from "../../../../web/session/chair/deviceLacks"

describe("what a device cannot do at the chair", () => {
  it("is nothing where it has sound, vibration and a screen that stays awake", () => {
    expect(deviceLacks({ hasSound: true, canVibrate: true, canStayAwake: true })).toEqual([])
  })
  it.each([
    [true, false, "no-vibration"],
    [false, true, "no-sound"],
    [false, false, "neither"],
  ])("says what calls instead: sound %s, vibration %s", (hasSound, canVibrate, lack) => {
    expect(deviceLacks({ hasSound, canVibrate, canStayAwake: true })).toEqual([lack])
  })
  it("asks for a screen set to stay on where none can be held", () => {
    expect(deviceLacks({ hasSound: true, canVibrate: true, canStayAwake: false })).toEqual(["may-sleep"])
  })
})
