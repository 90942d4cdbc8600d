import { describe, expect, it } from "vitest"
import { type Answered, askBeside } from "../../../web/session/askBeside"

type Fake = Worker & { said: { word: string; number: number }[]; isEnded: boolean }

/** A worker that says nothing by itself. */
function fakes() {
  const opened: Fake[] = []
  const open = () => {
    const fake: Fake = {
      said: [] as { word: string; number: number }[],
      isEnded: false,
      postMessage: (said: { word: string; number: number }) => void fake.said.push(said),
      terminate: () => {
        fake.isEnded = true
      },
    } as unknown as Fake
    opened.push(fake)
    return fake
  }
  return { opened, open }
}

const tell = (worker: Fake, data: Answered<string>) => worker.onmessage?.({ data } as MessageEvent)

describe("a worker that is asked", () => {
  it("is opened by the first question, and each gets its own answer, however they come", async () => {
    const { opened, open } = fakes()
    const beside = askBeside<{ word: string }, string>(open)
    expect(opened).toHaveLength(0)
    const heard: [number, number][] = []
    const [one, two] = [beside.ask({ word: "a" }, (...at) => heard.push(at)), beside.ask({ word: "b" })]
    expect(opened).toHaveLength(1)
    const [worker] = opened
    expect(worker.said).toEqual([
      { word: "a", number: one.number },
      { word: "b", number: two.number },
    ])
    tell(worker, { number: two.number, answer: "B" })
    tell(worker, { number: one.number, at: { done: 1, count: 3 } })
    expect(beside.isAsked()).toBe(true)
    tell(worker, { number: one.number, fault: "broken" })
    expect(await two.answer).toBe("B")
    await expect(one.answer).rejects.toThrow("broken")
    expect(heard).toEqual([[1, 3]])
    expect(beside.isAsked()).toBe(false)
  })

  it("calls off what was asked when it ends, and begins anew with the next question", async () => {
    const { opened, open } = fakes()
    const beside = askBeside<{ word: string }, string>(open)
    const { answer } = beside.ask({ word: "a" })
    beside.end()
    expect(opened[0].isEnded).toBe(true)
    await expect(answer).rejects.toMatchObject({ name: "AbortError" })
    const next = beside.ask({ word: "b" })
    tell(opened[1], { number: next.number, answer: "B" })
    expect(await next.answer).toBe("B")
  })

  it("answers by null what no worker could hear, and asks a new one next", async () => {
    const { opened, open } = fakes()
    const beside = askBeside<{ word: string }, string>(open)
    const { answer } = beside.ask({ word: "a" })
    opened[0].onerror?.({} as ErrorEvent)
    expect(await answer).toBe(null)
    expect(opened[0].isEnded).toBe(true)
    const next = beside.ask({ word: "b" })
    tell(opened[1], { number: next.number, answer: "B" })
    expect(await next.answer).toBe("B")
  })
})
