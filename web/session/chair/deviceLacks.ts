/** What a device can do of its own to call a colourist. */
type Device = { hasSound: boolean; canVibrate: boolean; canStayAwake: boolean }

export const thisDevice = (): Device => ({
  hasSound: "AudioContext" in globalThis,
  canVibrate: "vibrate" in navigator,
  canStayAwake: "wakeLock" in navigator,
})

/** What this device cannot do at the chair, and what to do instead; nothing where it can do it all. */
export function deviceLacks({ hasSound, canVibrate, canStayAwake }: Device): string[] {
  const calls =
    hasSound && canVibrate
      ? []
      : hasSound
        ? ["This device cannot vibrate: leave its sound on."]
        : canVibrate
          ? ["This device makes no sound here: keep it where you feel it vibrate, or see it."]
          : ["This device neither sounds nor vibrates here: keep the screen in sight."]
  return canStayAwake
    ? calls
    : [...calls, "This device may let its screen sleep: set it to stay on for the service."]
}
