/** What a worker answers to the question of that number: how far it has come, what went wrong, or the answer. */
export type Answered<Answer> = { number: number } & (
  | { at: { done: number; count: number } }
  | { fault: string }
  | { answer: Answer }
)
export type Progress = (done: number, count: number) => void

type Asked<Answer> = {
  resolve(answer: Answer | null): void
  reject(error: unknown): void
  onProgress: Progress | undefined
}

/**
 * Asks a worker numbered questions. It is opened for the first and ends when it is told to; then whatever was asked is
 * called off. A question that no worker could even hear is answered by null; the next is asked of a new one.
 */
export function askBeside<Question, Answer>(open: () => Worker) {
  const asked = new Map<number, Asked<Answer>>()
  let count = 0
  let worker: Worker | null = null
  const end = () => {
    worker?.terminate()
    worker = null
    const over = new DOMException("no longer wanted", "AbortError")
    for (const { reject } of asked.values()) reject(over)
    asked.clear()
  }
  const start = () => {
    const fresh = open()
    fresh.onmessage = ({ data }: MessageEvent<Answered<Answer>>) => hear(data)
    fresh.onerror = () => {
      fresh.terminate()
      worker = null
      for (const { resolve } of asked.values()) resolve(null)
      asked.clear()
    }
    return fresh
  }
  const hear = (news: Answered<Answer>) => {
    const question = asked.get(news.number)
    if ("at" in news) return question?.onProgress?.(news.at.done, news.at.count)
    asked.delete(news.number)
    if ("fault" in news) question?.reject(new Error(news.fault))
    else question?.resolve(news.answer)
  }
  return {
    end,
    isAsked: () => asked.size > 0,
    /** The number of the question, and its answer. */
    ask(question: Question, onProgress?: Progress) {
      worker ??= start()
      count += 1
      const number = count
      worker.postMessage({ ...question, number })
      const answer = new Promise<Answer | null>((resolve, reject) => {
        asked.set(number, { resolve, reject, onProgress })
      })
      return { number, answer }
    },
  }
}
