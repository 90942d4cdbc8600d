import type { PublicPass, PublicStops } from "../../../core/cautions/publicStops"
import type { publicWords as english } from "../../en/cautions/publicWords"
import { fullStop } from "../../fullStop"
import { say } from "../../say"
import { mixCautions } from "./mixCautions"
import { ruleNames } from "./ruleNames"

/** Stops as a sheet tells them that hangs where others read it. */
export const publicWords: typeof english = (t, named) => {
  const mixes = mixCautions(t, named)
  const head = ({ state, day }: PublicStops) =>
    state === "stop"
      ? "NICHT FREIGEGEBEN: NICHT MISCHEN"
      : state === "not-asked"
        ? "NICHT FREIGEGEBEN: Gesundheit nicht erfragt"
        : `Geprüft: kein Stopp offen am ${t.date(day)}`
  const open = ({ state, stops, notAsked }: PublicStops) => {
    if (state === "stop")
      return [t.count(stops, { one: "# Stopp ist offen.", other: "# Stopps sind offen." })]
    if (state === "not-asked")
      return [
        t.count(notAsked, { one: "# Angabe ist nicht erfragt.", other: "# Angaben sind nicht erfragt." }),
      ]
    return []
  }
  const detail = (told: PublicStops) =>
    [
      ...open(told),
      ...told.mixes.map((why) => say(mixes, why)),
      ...told.tests.map((product) => `Der Hauttest mit ${product} ist nicht freigegeben.`),
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
  rule === null
    ? fullStop(`Ein Stopp wurde übergangen von ${by}`)
    : `„${ruleNames[rule]}“ übergangen von ${by}: ${reason}`
