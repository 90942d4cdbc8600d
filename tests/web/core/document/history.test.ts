import fc from "fast-check"
import { describe, expect, it } from "vitest"
import {
  commit,
  type History,
  redo,
  redoLabel,
  startHistory,
  undo,
  undoLabel,
} from "../../../../web/core/document/history"

const three = commit(commit(startHistory("a"), "Add b", "ab"), "Add c", "abc")

describe("undo and redo", () => {
  it("walk the documents back and forth under the words of the menu", () => {
    expect(undoLabel(three)).toBe("Add c")
    expect(undo(three).present).toBe("ab")
    expect(redoLabel(undo(three))).toBe("Add c")
    expect(undo(undo(three)).present).toBe("a")
    expect(redo(undo(three)).present).toBe("abc")
  })
  it("do nothing at the ends", () => {
    expect(undo(startHistory("a"))).toEqual(startHistory("a"))
    expect(redo(three)).toEqual(three)
    expect(undoLabel(startHistory("a"))).toBeNull()
  })
  it("forget what was undone once something else is done", () => {
    const branched = commit(undo(three), "Add d", "abd")
    expect(branched.future).toEqual([])
    expect(undo(branched).present).toBe("ab")
  })
})

describe("commit", () => {
  it("takes no step when nothing changed", () => {
    expect(commit(three, "Nothing", "abc")).toBe(three)
  })
  it("joins commits of one key into one step", () => {
    const nudged = commit(commit(three, "Nudge", "x", "nudge s1"), "Nudge", "y", "nudge s1")
    expect(nudged.past.length).toBe(3)
    expect(undo(nudged).present).toBe("abc")
  })
  it("starts a new step after another key, a change without one, or an undo", () => {
    const nudge = (history: History<string>, to: string, key: string) => commit(history, "Nudge", to, key)
    const first = nudge(three, "x", "nudge s1")
    expect(nudge(first, "y", "nudge s2").past.length).toBe(4)
    expect(nudge(commit(first, "Add", "z"), "y", "nudge s1").past.length).toBe(5)
    expect(nudge(redo(undo(first)), "y", "nudge s1").past.length).toBe(4)
  })
  it("keeps the last 300 steps", () => {
    let history = startHistory(0)
    for (let i = 1; i <= 310; i++) history = commit(history, `Step ${i}`, i)
    expect(history.past.length).toBe(300)
    for (let i = 0; i < 400; i++) history = undo(history)
    expect(history.present).toBe(10)
  })
})

describe("any history", () => {
  const histories = fc
    .array(fc.tuple(fc.string(), fc.integer(), fc.option(fc.constantFrom("p", "q"))), { maxLength: 20 })
    .map((steps) =>
      steps.reduce((history, [label, value, key]) => commit(history, label, value, key), startHistory(0)),
    )
  it("is the same after undo and redo, but for the key", () => {
    fc.assert(
      fc.property(histories, (history) => {
        if (history.past.length > 0) expect(redo(undo(history))).toEqual({ ...history, key: null })
      }),
    )
  })
  it("goes back to its first document", () => {
    fc.assert(
      fc.property(histories, (history) => {
        let first = history
        for (let i = 0; i < 20; i++) first = undo(first)
        expect(first.present).toBe(history.past[0]?.document ?? history.present)
      }),
    )
  })
})
