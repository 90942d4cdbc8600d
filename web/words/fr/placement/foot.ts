import type { WornParting } from "../../../../geometry/parting/wornParting"
import type { SectionKind } from "../../../../geometry/section/section"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { LandmarkCode, Side } from "../../../core/placement/places"
import type { FoilAt } from "../../../core/schedule/foilsAt"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"
import { pieces } from "../common/pieces"

/** What the figures at the foot of the map say. A figure stands before its words. */
export const foot = (t: Tools, { kinds, clientSide, landmark }: CommonWords) => {
  const worn: Record<WornParting["kind"] | "unknown", string> = {
    centre: "raie au milieu",
    side: "raie sur le côté",
    zigzag: "raie en zigzag",
    none: "peignés vers l’arrière",
    unknown: "raie au milieu supposée (non réglée)",
  }
  return {
    empty: "Rien de tracé encore. Cheveux, surface à enduire et grammes s’afficheront ici.",
    totals: "Totaux",
    inHand: ({ kind, number }: { kind: SectionKind; number: number | null }) =>
      number === null ? t.capital(kinds[kind]) : `${t.capital(kinds[kind])} ${t.whole(number)}`,
    depth: (mm: number) => `× ${t.mm(mm, 1)}`,
    behindHairline: (at: LandmarkCode) => `derrière la lisière, ${landmark(at)}`,
    scalp: "cuir chevelu",
    hairs: "cheveux",
    hairToCoat: "à enduire",
    product: (range: string) => `produit, ${range}`,
    foils: (foils: number, piece: Piece) => pieces(t).count(foils, piece),
    sections: (sections: number) => t.count(sections, { one: "# section", other: "# sections" }),
    more: "plus",
    estimates: "Estimations. Les bols sont prévus au chiffre haut.",
    estimatesLess: (less: string) => `${less}. Les bols sont prévus au chiffre haut.`,
    firstToLast: "de la première posée à la dernière retirée",
    minuteByMinute: "Minute par minute",
    showHairDown: "Voir les cheveux lâchés",
    backToDrawing: "Retour au tracé",

    fall: {
      label: "Cheveux lâchés",
      title: "Montre où c’est éclairci, pas la couleur",
      calculating: "Calcul…",
      side: (side: Exclude<Side, "centre">) => t.capital(clientSide[side]),
      range: (low: number, high: number) => `(de ${t.percent(low)} à ${t.percent(high)})`,
      told: ({ withinCm, heads, kind }: { withinCm: number; heads: number; kind: keyof typeof worn }) =>
        `des cheveux visibles de face, à moins de ${t.cm(withinCm)} du visage, sont éclaircis. ` +
        `Fourchette : ${t.count(heads, { one: "# tête simulée", other: "# têtes simulées" })}. ` +
        `Dessinés secs et lisses, ${worn[kind]}. Un croquis, pas une couleur.`,
    },

    minutes: {
      label: "Le schéma minute par minute",
      slider: "Minute montrée sur le schéma",
      listLabel: (atMin: number) => `Papillotes à la minute ${t.whole(atMin)}`,
      foil: ({
        number,
        piece,
        state,
        onMin,
      }: { number: number; piece?: Piece } & Pick<FoilAt, "state" | "onMin">) => {
        const called = t.capital(pieces(t).names([number], piece))
        if (state === "waiting") return `${called} : pas encore posée`
        return state === "on"
          ? `${called} : en pose depuis ${t.minutes(onMin)}`
          : `${called} : retirée, après ${t.minutes(onMin)}`
      },
      keyLabel: "Ce que disent les teintes : minutes de pose, pas un résultat",
      keys: {
        waiting: "pas posée",
        justOn: "à peine posée",
        half: "moitié du temps max",
        all: "tout le temps",
        off: "retirée",
      },
    },
  }
}
