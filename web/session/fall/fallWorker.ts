import { type Fall, type FallingPlan, fallsOf } from "../../core/fall/fall"

/** Questions are numbered, so that an answer to one that has been overtaken is known. */
export type FallQuestion = { number: number; plan: FallingPlan | null }
export type FallNews = { number: number; fall: Fall }

/** Grows hair beside the screen, which goes on answering. */
self.onmessage = ({ data: { number, plan } }: MessageEvent<FallQuestion>) => {
  if (plan) for (const fall of fallsOf(plan)) self.postMessage({ number, fall } satisfies FallNews)
}
