import type { PublicPass, PublicStops } from "../../../core/cautions/publicStops"
import type { CautionsWords } from "../../en/cautions/cautions"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { mixCautions } from "./mixCautions"
import { ruleNames } from "./ruleNames"

/** Stops as a sheet tells them that hangs where others read it. */
export function publicWords(t: Tools, named: (mix: string) => string): CautionsWords["onSheet"] {
  const mixes = mixCautions(t, named)
  /** In type as large as the numbers of the foils. */
  const head = ({ state, day }: PublicStops) =>
    state === "stop"
      ? "БЕЗ ДОПУСКУ: НЕ ЗМІШУВАТИ"
      : state === "not-asked"
        ? "БЕЗ ДОПУСКУ: про здоров’я не запитано"
        : `Перевірено: ${t.date(day)} відкритих заборон немає`
  const counted = ({ state, stops, notAsked }: PublicStops) => {
    if (state === "stop") return [`Відкритих заборон: ${t.whole(stops)}.`]
    if (state === "not-asked") return [`Не запитано: ${t.whole(notAsked)}.`]
    return []
  }
  const detail = (told: PublicStops) =>
    [
      ...counted(told),
      ...told.mixes.map((why) => say(mixes, why)),
      ...told.tests.map((product) => `Шкірний тест «${product}» не зараховано.`),
      ...told.passes.map(overridden),
    ]
      .join(" ")
      .replaceAll("\n", " ")
  return {
    head,
    detail,
    stops: (told) => [`${head(told)}.`, detail(told)].filter((part) => part !== "").join(" "),
  }
}

/** A stop that tells an illness goes without its name and its reason. */
const overridden = ({ rule, by, reason }: PublicPass) =>
  rule === null ? `Заборону обійдено (${by}).` : `Заборону «${ruleNames[rule]}» обійдено (${by}): ${reason}`
