import type { PublicPass, PublicStops } from "../../../core/cautions/publicStops"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { mixCautions } from "./mixCautions"
import { ruleNames } from "./ruleNames"

/** Stops as a sheet tells them that hangs where others read it. */
export function publicWords(t: Tools, named: (mix: string) => string) {
  const mixes = mixCautions(t, named)
  /** In type as large as the numbers of the foils. */
  const head = ({ state, day }: PublicStops) =>
    state === "stop"
      ? "PAS DE FEU VERT : NE PAS MÉLANGER"
      : state === "not-asked"
        ? "PAS DE FEU VERT : santé non demandée"
        : `Contrôles faits : aucun blocage en cours le ${t.date(day)}`
  const detail = ({ state, stops, notAsked }: PublicStops) => {
    if (state === "stop")
      return [t.count(stops, { one: "# blocage en cours.", other: "# blocages en cours." })]
    if (state === "not-asked")
      return [
        t.count(notAsked, {
          one: "# point n’a pas été demandé.",
          other: "# points n’ont pas été demandés.",
        }),
      ]
    return []
  }
  return {
    head,
    /** What follows the head. */
    detail: (told: PublicStops) =>
      [
        ...detail(told),
        ...told.mixes.map((why) => say(mixes, why)),
        ...told.tests.map((product) => `Touche d’essai (${product}) : pas de feu vert.`),
        ...told.passes.map(overridden),
      ]
        .join(" ")
        .replaceAll("\n", " "),
    /** Both in one line. */
    stops: (told: PublicStops): string =>
      [`${head(told)}.`, publicWords(t, named).detail(told)].filter((part) => part !== "").join(" "),
  }
}

/** A stop that tells an illness goes without its name and its reason. */
const overridden = ({ rule, by, reason }: PublicPass) =>
  rule === null
    ? `Dérogation de ${by} à un blocage.`
    : `Dérogation de ${by} à « ${ruleNames[rule]} » : ${reason}`
