/** What a device can do of its own to call a colourist. */
type Device = { hasSound: boolean; canVibrate: boolean; canStayAwake: boolean }

export const thisDevice = (): Device => ({
  hasSound: "AudioContext" in globalThis,
  canVibrate: "vibrate" in navigator,
  canStayAwake: "wakeLock" in navigator,
})

export type DeviceLack = "no-vibration" | "no-sound" | "neither" | "may-sleep"

/** What this device cannot do at the chair; nothing where it can do it all. */
export function deviceLacks({ hasSound, canVibrate, canStayAwake }: Device): DeviceLack[] {
  const calls: DeviceLack[] =
    hasSound && canVibrate ? [] : hasSound ? ["no-vibration"] : canVibrate ? ["no-sound"] : ["neither"]
  return canStayAwake ? calls : [...calls, "may-sleep"]
}
