import { describe, expect, it } from "vitest"
import { remembered, rememberedByText, rememberedLast } from "../../../../web/core/memory/remembered"

describe("what is remembered", () => {
  it("is worked out once for the same things, and anew where one of them is another", () => {
    let made = 0
    const sum = remembered((a: { n: number }, b: { n: number }) => {
      made++
      return a.n + b.n
    })
    const [two, three, five] = [{ n: 2 }, { n: 3 }, { n: 5 }]
    expect([sum(two, three), sum(two, three), sum(two, five), sum(five, three)]).toEqual([5, 5, 7, 8])
    expect(made).toBe(3)
  })

  it("may be nothing, and is not asked for again", () => {
    let asked = 0
    const nothing = remembered((_: object) => {
      asked++
      return undefined
    })
    const plan = {}
    expect([nothing(plan), nothing(plan), asked]).toEqual([undefined, undefined, 1])
  })
})

describe("what is remembered of the last time", () => {
  const growing = () =>
    rememberedLast<object, number, readonly number[]>(
      (before, now) => before === now,
      (_, on, before) => [...(before?.made ?? []), on],
    )
  it("stays until it stands on another, and is at hand for the next", () => {
    const listed = growing()
    const section = {}
    const first = listed(section, 4)
    expect(listed(section, 4)).toBe(first)
    expect(listed(section, 7)).toEqual([4, 7])
    expect(listed(section, 4)).toEqual([4, 7, 4])
  })
  it("is that of its own thing", () => {
    const listed = growing()
    listed({}, 4)
    expect(listed({}, 9)).toEqual([9])
  })
})

describe("what is remembered by how it reads", () => {
  it("is the same object for the same words, until as many others were asked for since", () => {
    const headOf = rememberedByText(2, (size: { cm: number }) => ({ size }))
    const first = headOf({ cm: 55 })
    headOf({ cm: 57 })
    expect(headOf({ cm: 55 })).toBe(first)
    headOf({ cm: 53 })
    expect(headOf({ cm: 55 })).toBe(first)
    headOf({ cm: 57 })
    headOf({ cm: 53 })
    expect(headOf({ cm: 55 })).not.toBe(first)
  })
})
