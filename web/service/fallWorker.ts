import { type FallingPlan, fallsOf } from "./fall"

/** Grows hair beside the screen, which goes on answering. */
self.onmessage = ({ data }: MessageEvent<FallingPlan>) => {
  for (const fall of fallsOf(data)) self.postMessage(fall)
}
