import { createStore } from "zustand/vanilla"

/** The last thing that happened, in one sentence, for the eye and for a screen reader. */
export const announcements = createStore<{ text: string; isRefusal: boolean }>(() => ({
  text: "",
  isRefusal: false,
}))

export const announce = (text: string) => announcements.setState({ text, isRefusal: false })
export const announceRefusal = (text: string) => announcements.setState({ text, isRefusal: true })
