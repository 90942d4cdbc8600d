import type { PublicPass, PublicStops } from "../../../core/cautions/publicStops"
import { fullStop } from "../../fullStop"
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
      ? "SIN VISTO BUENO: NO MEZCLAR"
      : state === "not-asked"
        ? "SIN VISTO BUENO: salud sin preguntar"
        : `Comprobaciones hechas: ningún bloqueo abierto el ${t.date(day)}`
  const detail = ({ state, stops, notAsked }: PublicStops) => {
    if (state === "stop")
      return [t.count(stops, { one: "Hay # bloqueo abierto.", other: "Hay # bloqueos abiertos." })]
    if (state === "not-asked")
      return [
        t.count(notAsked, {
          one: "# punto no se ha preguntado.",
          other: "# puntos no se han preguntado.",
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
        ...told.tests.map((product) => `La prueba de alergia con ${product} no tiene el visto bueno.`),
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
    ? fullStop(`Un bloqueo fue anulado por ${by}`)
    : `«${ruleNames[rule]}» anulado por ${by}: ${reason}`
