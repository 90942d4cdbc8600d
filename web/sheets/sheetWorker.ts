import type { SheetQuestion } from "./sheetNews"

/**
 * Lays out and prints sheets beside the screen, which goes on answering. Nothing else stands here: the words of a
 * language import what they share with the rest, and WebKit would run a worker's first file once more for them.
 */
const desk = import("./sheetDesk")

self.onmessage = async ({ data }: MessageEvent<SheetQuestion & { number: number }>) => {
  const { answerSheet } = await desk
  await answerSheet(data)
}
