import type { MixCode, SheetGap } from "../../../core/cautions/rules/cautionCode"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"

/** What was found of a mix. */
export function mixCautions(t: Tools, named: (mix: string) => string) {
  const gaps: Record<SheetGap, string> = {
    "longest-time": "le temps max",
    "on-scalp": "s’il peut toucher le cuir chevelu",
    "alert-test": "s’il demande une touche d’essai",
    "pot-life": "la durée d’emploi du mélange",
  }
  return {
    "over-legal-limit": ({ mix, onHeadPercent, mostPercent }) =>
      `${named(mix)} : ${t.number(onHeadPercent, 1)} % de peroxyde sur la tête ; la loi permet ${mostPercent} % dans l’UE et au Royaume-Uni. Prendre un oxydant plus faible.`,
    "hairline-strength": ({ mix, volume, mostVolume }) =>
      `${named(mix)} : ${t.number(volume)} vol à la lisière ; ${mostVolume} vol y est le maximum (pratique courante). Prendre ${mostVolume} vol ou un mélange à part.`,
    "strong-developer": ({ mix, volume, usualMostVolume }) =>
      `${named(mix)} : ${t.number(volume)} vol, au-dessus du maximum habituel de ${usualMostVolume}. Deux séances plus douces ménagent mieux les cheveux.`,
    "developer-not-on-sheet": ({ mix, product, volume, listed }) =>
      `${named(mix)} : ${product} n’est pas prévu pour ${t.number(volume)} vol ; son mode d’emploi indique ${t.or(listed.map((each) => t.number(each)))} vol.`,
    "ratio-not-on-sheet": ({ mix, product, parts, low, high }) =>
      low === high
        ? `${named(mix)} à 1 : ${t.number(parts)} ; le mode d’emploi (${product}) dit 1 : ${t.number(low)}.`
        : `${named(mix)} à 1 : ${t.number(parts)} ; le mode d’emploi (${product}) dit de 1 : ${t.number(low)} à 1 : ${t.number(high)}.`,
    "off-scalp-product": ({ mix, product }) =>
      `${named(mix)} : ${product} ne s’emploie que hors cuir chevelu. Commencer plus loin du cuir chevelu ou choisir un autre produit.`,
    heat: ({ mix, heatMin, allowedMin }) => {
      const planned = `${t.number(heatMin)} min de chaleur prévues`
      if (allowedMin === null)
        return `${named(mix)} : ${planned} ; le mode d’emploi ne parle pas de chaleur. Arrêter la chaleur.`
      if (allowedMin === 0)
        return `${named(mix)} : ${planned} ; le mode d’emploi l’interdit. Arrêter la chaleur.`
      return `${named(mix)} : ${planned} ; le mode d’emploi en permet ${t.number(allowedMin)}. Raccourcir ou arrêter la chaleur.`
    },
    "heat-place": ({ mix, forbiddenVolume }) =>
      `${named(mix)} : pas de chaleur à ${forbiddenVolume} vol ou plus, près de la lisière, ni près d’un coussin de crêpage.`,
    "heat-time": ({ mix, heatMin, usualMostMin }) =>
      `${named(mix)} : ${t.number(heatMin)} min de chaleur prévues ; ${t.number(usualMostMin)} min sont le maximum habituel, quoi que permette le mode d’emploi.`,
    "open-air-dries": ({ mix }) =>
      `${named(mix)} est à l’air libre, où il sèche et n’agit plus. Le garder humide : film ou réhumidification selon le fabricant (usage courant).`,
    "stronger-roots": ({ mix, volume, endsMix, endsVolume }) =>
      `${named(mix)}, ${t.number(volume)} vol, serait sur la racine au-dessus du mélange ${endsMix}, plus faible, ${t.number(endsVolume)} vol, sur les pointes. La chaleur du cuir chevelu éclaircit plus vite la racine : il est d’usage d’y mettre la même force, ou moins (usage courant).`,
    "no-sheet": ({ mix, product }) =>
      `${named(mix)} : pas de fiche produit pour ${product}. Saisir ce que dit le pot. S’il contient un colorant, il faut une touche d’essai.`,
    "sheet-silent": ({ mix, product, gaps: missing }) =>
      `${named(mix)} : la fiche produit (${product}) ne dit pas ${t.or(missing.map((gap) => gaps[gap]))}. Regarder sur le pot.`,
  } satisfies Sentences<MixCode>
}
