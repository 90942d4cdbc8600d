import type { MixCode, SheetGap } from "../../../core/cautions/rules/cautionCode"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"

/** What was found of a mix. */
export function mixCautions(t: Tools, named: (mix: string) => string) {
  const gaps: Record<SheetGap, string> = {
    "longest-time": "el tiempo máximo",
    "on-scalp": "si puede tocar el cuero cabelludo",
    "alert-test": "si necesita prueba de alergia",
    "pot-life": "la vida útil de la mezcla",
  }
  return {
    "over-legal-limit": ({ mix, onHeadPercent, mostPercent }) =>
      `${named(mix)}: tendría ${t.number(onHeadPercent, 1)}\u00a0% de peróxido en la cabeza; la ley permite ${mostPercent}\u00a0% en la UE y el Reino Unido. Use un oxidante más suave.`,
    "hairline-strength": ({ mix, volume, mostVolume }) =>
      `${named(mix)}: ${t.number(volume)} vol en el contorno; allí se usan como máximo ${mostVolume} vol (práctica común). Use ${mostVolume} vol o una mezcla aparte.`,
    "strong-developer": ({ mix, volume, usualMostVolume }) =>
      `${named(mix)}: ${t.number(volume)} vol, por encima del máximo habitual de ${usualMostVolume}. Dos visitas más suaves castigan menos el cabello.`,
    "developer-not-on-sheet": ({ mix, product, volume, listed }) =>
      `${named(mix)}: ${product} no está previsto para ${t.number(volume)} vol; sus instrucciones citan ${t.or(listed.map((each) => t.number(each)))} vol.`,
    "ratio-not-on-sheet": ({ mix, product, parts, low, high }) =>
      low === high
        ? `${named(mix)}: 1 : ${t.number(parts)}; las instrucciones de ${product} dicen 1 : ${t.number(low)}.`
        : `${named(mix)}: 1 : ${t.number(parts)}; las instrucciones de ${product} dicen de 1 : ${t.number(low)} a 1 : ${t.number(high)}.`,
    "off-scalp-product": ({ mix, product }) =>
      `${named(mix)}: ${product} es solo para uso sin contacto con el cuero cabelludo. Empiece más lejos del cuero cabelludo o elija otro producto.`,
    heat: ({ mix, heatMin, allowedMin }) => {
      const planned = `${t.number(heatMin)} min de calor previstos`
      if (allowedMin === null)
        return `${named(mix)}: ${planned}; las instrucciones no mencionan el calor. Apague el calor.`
      if (allowedMin === 0)
        return `${named(mix)}: ${planned}; las instrucciones lo prohíben. Apague el calor.`
      return `${named(mix)}: ${planned}; las instrucciones permiten ${t.number(allowedMin)}. Acorte el calor o apáguelo.`
    },
    "heat-place": ({ mix, forbiddenVolume }) =>
      `${named(mix)}: sin calor con ${forbiddenVolume} vol o más, cerca del contorno o cerca de un colchón cardado.`,
    "heat-time": ({ mix, heatMin, usualMostMin }) =>
      `${named(mix)}: ${t.number(heatMin)} min de calor previstos; lo habitual son ${t.number(usualMostMin)} min como máximo, permitan lo que permitan las instrucciones.`,
    "open-air-dries": ({ mix }) =>
      `${named(mix)} queda al aire, donde se seca y deja de actuar. Manténgala húmeda: film o volver a humedecer, como indica el fabricante (práctica común).`,
    "stronger-roots": ({ mix, volume, endsMix, endsVolume }) =>
      `${named(mix)}, ${t.number(volume)} vol, iría en la raíz sobre la mezcla ${endsMix}, más suave, ${t.number(endsVolume)} vol, en las puntas. El calor del cuero cabelludo aclara antes la raíz: lo usual es ahí la misma fuerza, o menos (práctica común).`,
    "no-sheet": ({ mix, product }) =>
      `${named(mix)}: no hay ficha de ${product}. Introduzca lo que dice el bote. Si contiene tinte, necesita prueba de alergia.`,
    "sheet-silent": ({ mix, product, gaps: missing }) =>
      `${named(mix)}: la ficha de ${product} no dice ${t.or(missing.map((gap) => gaps[gap]))}. Mírelo en el bote.`,
  } satisfies Sentences<MixCode>
}
