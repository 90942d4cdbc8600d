import { expect, test } from "vitest"
import { placedFrom } from "../../../../web/core/weighing/weighedBowl"

test("what left the bowl, without crumbs in the last digits", () => {
  expect(placedFrom({ beforeG: 212.3, afterG: 178.1 })).toEqual({ ok: true, productG: 34.2 })
  expect(placedFrom({ beforeG: 40, afterG: 0 })).toEqual({ ok: true, productG: 40 })
})

test.each([
  [178, 212, /^178 g before and 212 g after: the bowl cannot gain; were the two readings exchanged\?$/],
  [200, 200, /nothing was placed; leave this bowl out/],
  [-3, 2, /^−3 g before .*give both readings in grams/],
  [Number.NaN, 2, /^no number g before .*give both readings/],
  [Number.POSITIVE_INFINITY, 2, /give both readings/],
])("%d before, %d after is refused", (beforeG, afterG, words) => {
  const result = placedFrom({ beforeG, afterG })
  expect(result.ok ? "" : result.problem).toMatch(words)
})
