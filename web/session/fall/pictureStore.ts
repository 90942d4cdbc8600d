import { createStore } from "zustand/vanilla"
import type { WornFront } from "../../../geometry/strands/gather"

/**
 * How the picture of the hair is looked at: how the front is worn, weeks after the service, before toner or with it, and
 * alone on the page. Never saved.
 */
export type PictureLook = { front: WornFront; weeksOn: number; isToned: boolean; isAlone: boolean }

export const pictureStore = createStore<PictureLook>(() => ({
  front: "cheek",
  weeksOn: 0,
  isToned: true,
  isAlone: false,
}))
