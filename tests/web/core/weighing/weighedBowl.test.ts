import { expect, test } from "vitest"
import { placedFrom } from "../../../../web/core/weighing/weighedBowl"
import { say } from "../../../../web/words/say"
import { en } from "../../../support/words"

test("what left the bowl, without crumbs in the last digits", () => {
  expect(placedFrom({ beforeG: 212.3, afterG: 178.1 })).toEqual({ ok: true, productG: 34.2 })
  expect(placedFrom({ beforeG: 40, afterG: 0 })).toEqual({ ok: true, productG: 40 })
})

test.each([
  [
    178,
    212,
    /^178 g before and 212 g after: the bowl weighs more after than before\. Were the readings swapped\?$/,
  ],
  [200, 200, /nothing was used\. Leave this bowl out/],
  [-3, 2, /^-3 g before .*enter both readings in grams/],
  [Number.NaN, 2, /^– g before .*enter both readings/],
  [Number.POSITIVE_INFINITY, 2, /enter both readings/],
])("%d before, %d after is refused", (beforeG, afterG, words) => {
  const result = placedFrom({ beforeG, afterG })
  expect(result.ok ? "" : say(en.weighing.bowl.problem, result.problem)).toMatch(words)
})
