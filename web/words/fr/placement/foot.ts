import type { WornParting } from "../../../../geometry/parting/wornParting"
import type { SectionKind } from "../../../../geometry/section/section"
import type { WornFront } from "../../../../geometry/strands/gather"
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
  const fronts: Record<WornFront, string> = {
    cheek: "sur la joue",
    tucked: "derrière l’oreille",
    tied: "attachés",
  }
  const toned = {
    cool: "patiné froid",
    neutral: "patiné neutre",
    warm: "patiné chaud",
    none: "avant la patine",
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
    firstToLast: (_: Piece): string => "de la première posée à la dernière retirée",
    minuteByMinute: "Minute par minute",
    showHairDown: "Voir les cheveux lâchés",
    backToDrawing: "Retour au tracé",

    fall: {
      label: "Cheveux lâchés",
      title: "Un croquis d’après des valeurs de pigment",
      calculating: "Calcul…",
      side: (side: Exclude<Side, "centre">) => t.capital(clientSide[side]),
      range: (low: number, high: number) => `(de ${t.percent(low)} à ${t.percent(high)})`,
      told: ({
        withinCm,
        heads,
        kind,
        front,
      }: {
        withinCm: number
        heads: number
        kind: keyof typeof worn
        front: WornFront
      }) =>
        `des cheveux visibles de face, à moins de ${t.cm(withinCm)} du visage, sont éclaircis. ` +
        `Fourchette : ${t.count(heads, { one: "# tête simulée", other: "# têtes simulées" })}. ` +
        `Dessinés secs et lisses, ${worn[kind]}, devant ${fronts[front]}, le jour même. C’est le test mèche qui montre la couleur.`,
      /** What is drawn, and how far its colour may be out. */
      drawn: ({ now, aimed, finish }: { now: number; aimed: number; finish: keyof typeof toned | null }) =>
        `Dessiné de la hauteur ${t.number(now)} à ${t.number(aimed)}, ${toned[finish ?? "none"]} ; les nuances vont d’une hauteur plus foncée à une plus claire.`,
      nowAssumed: (level: number) => `Hauteur actuelle non indiquée : dessinée à ${t.number(level)}.`,
      aimedAssumed: (level: number) => `Hauteur visée non indiquée : dessinée à ${t.number(level)}.`,
      front: "Devant",
      fronts,
      swatches: "Couleur, en fourchette",
      weeks: "Semaines après",
      weeksOn: ({ weeks, lowMm, highMm }: { weeks: number; lowMm: number; highMm: number }) =>
        weeks === 0
          ? "le jour même"
          : `${t.count(weeks, { one: "# semaine", other: "# semaines" })}: repousse de ${t.spread(t.whole(lowMm), t.whole(highMm))} mm (fourchette)`,
      withToner: "Avec patine",
      showToClient: "Montrer en grand",
      backToFigures: "Revenir aux chiffres",
      clientSentence:
        "Un croquis de l’endroit où tombe la lumière. C’est le test mèche qui montre la couleur.",
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
