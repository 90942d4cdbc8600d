/** Sound, vibration and a screen that stays awake, where the device has them. */

let audio: AudioContext | null = null

/** Browsers let a page sound only after a touch: called from the first tap. */
export function wakeSound() {
  try {
    audio ??= new AudioContext()
    void audio.resume()
  } catch {
    audio = null
  }
}

export type Signal = "soon" | "now" | "late"

const beeps: Record<Signal, { count: number; hertz: number }> = {
  soon: { count: 1, hertz: 660 },
  now: { count: 2, hertz: 880 },
  late: { count: 4, hertz: 990 },
}
const beepSeconds = 0.16

export function sound(signal: Signal) {
  const { count, hertz } = beeps[signal]
  for (let i = 0; i < count; i++) beep(hertz, i * beepSeconds * 1.6)
  if (navigator.userActivation?.hasBeenActive) navigator.vibrate?.(new Array(count * 2 - 1).fill(160))
}

function beep(hertz: number, afterSeconds: number) {
  if (audio?.state !== "running") return
  const [tone, volume] = [audio.createOscillator(), audio.createGain()]
  const from = audio.currentTime + afterSeconds
  tone.frequency.value = hertz
  volume.gain.setValueAtTime(0.25, from)
  volume.gain.exponentialRampToValueAtTime(0.001, from + beepSeconds)
  tone.connect(volume).connect(audio.destination)
  tone.start(from)
  tone.stop(from + beepSeconds)
}

/** Keeps the screen awake until told not to; a device that refuses goes on as it does. */
export function keepAwake(): () => void {
  let lock: WakeLockSentinel | null = null
  let isWanted = true
  const ask = () => {
    if (document.visibilityState !== "visible" || !navigator.wakeLock) return
    navigator.wakeLock.request("screen").then(
      (granted) => {
        lock = granted
        if (!isWanted) void granted.release()
      },
      () => {},
    )
  }
  ask()
  document.addEventListener("visibilitychange", ask)
  return () => {
    isWanted = false
    document.removeEventListener("visibilitychange", ask)
    void lock?.release()
  }
}
