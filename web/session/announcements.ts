import { createStore } from "zustand/vanilla"

/** The last thing that happened, in one sentence, for the eye and for a screen reader; `turn` tells a repetition. */
export const announcements = createStore(() => ({ text: "", isRefusal: false, turn: 0 }))

export const announce = (text: string) => tell(text, false)
export const announceRefusal = (text: string) => tell(text, true)

const tell = (text: string, isRefusal: boolean) =>
  announcements.setState(({ turn }) => ({ text, isRefusal, turn: turn + 1 }))
