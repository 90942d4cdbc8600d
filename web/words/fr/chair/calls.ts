import type { CallCode } from "../../../core/chair/callCode"
import type { ToneZoneName } from "../../../core/document/serviceRecord"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"

export const toners = {
  "root-melt": "Fondu racine",
  mids: "Patine, longueurs",
  hairline: "Patine, lisière",
} satisfies Record<ToneZoneName, string>

/** What is due at the chair: as it is shown, second by second, and as it is spoken once. */
export const calls = (t: Tools) => {
  const who = (foils: readonly number[], piece?: Piece) => foilsWords(t, foils, piece)
  return {
    due: "À faire",
    toners,
    more: (count: number) => `et ${t.whole(count)} de plus`,
    freshBowl: "appuyer quand un nouveau bol est mélangé",
    /** One tap for all foils of a check. */
    carryOn: (foils: readonly number[], piece?: Piece) =>
      `Continuer, ${foilsWords(t, foils, piece).toLocaleLowerCase(t.locale)}`,
    off: (foil: number) => `Retirer ${foil}`,
    rootsOn: (foil: number) => `Racine ${t.whole(foil)} posée`,
    checkOne: "En contrôler une",
    rinse: "Rincé",

    shown: {
      "bowl-ahead": ({ bowl, mix, inMs }) => `Bol ${bowl}, mélange ${mix} : à finir avant ${t.clock(inMs)}`,
      "bowl-past": ({ bowl, mix, byMs }) =>
        `Bol ${bowl}, mélange ${mix} : durée d’emploi dépassée de ${t.clock(byMs)}, en refaire un`,
      "heat-ahead": ({ inMs }) => `Chaleur : à ôter dans ${t.clock(inMs)}`,
      "heat-past": ({ byMs }) => `Chaleur : à ôter maintenant, ${t.clock(byMs)} de trop`,
      "take-off": ({ foils, piece }) => `${who(foils, piece)} : retirer maintenant, un contrôle a dit arrêt`,
      "at-goal": ({ foils, piece }) => `${who(foils, piece)} : retirer maintenant, hauteur visée atteinte`,
      "planned-ahead": ({ foils, piece, inMs }) =>
        `${who(foils, piece)} : retrait prévu dans ${t.clock(inMs)}`,
      "planned-off": ({ foils, piece, byMs }) =>
        byMs < 60_000
          ? `${who(foils, piece)} : retrait prévu maintenant, contrôler`
          : `${who(foils, piece)} : retrait prévu il y a ${t.clock(byMs)}, contrôler`,
      "toner-ahead": ({ zone, inMs }) => `${toners[zone]} : rincer dans ${t.clock(inMs)}`,
      "toner-off": ({ zone, byMs }) => `${toners[zone]} : contrôler et rincer, ${t.clock(byMs)} de trop`,
      "toner-limit-ahead": ({ zone, inMs }) => `${toners[zone]} : temps max dans ${t.clock(inMs)}`,
      "toner-limit": ({ zone, byMs }) =>
        `${toners[zone]} : rincer maintenant, temps max dépassé de ${t.clock(byMs)}`,
      "limit-ahead": ({ foils, piece, inMs }) => `${who(foils, piece)} : temps max dans ${t.clock(inMs)}`,
      "limit-past": ({ foils, piece, byMs }) =>
        foils.length === 1
          ? `${who(foils, piece)} : retirer maintenant, temps max dépassé de ${t.clock(byMs)}`
          : `${who(foils, piece)} : retirer maintenant, temps max dépassé jusqu’à ${t.clock(byMs)}`,
      "roots-ahead": ({ foils, piece, mix, inMs }) =>
        `${who(foils, piece)} : racine dans ${t.clock(inMs)}, mélange ${mix}`,
      "roots-now": ({ foils, piece, mix, byMs }) =>
        byMs < 60_000
          ? `${who(foils, piece)} : poser la racine, mélange ${mix}`
          : `${who(foils, piece)} : poser la racine, mélange ${mix}, ${t.clock(byMs)} de retard`,
      "check-ahead": ({ foils, piece, inMs }) => `${who(foils, piece)} : contrôler dans ${t.clock(inMs)}`,
      "check-now": ({ foils, piece }) => `${who(foils, piece)} : contrôler maintenant`,
      "check-late": ({ foils, piece, byMs }) =>
        `${who(foils, piece)} : contrôler maintenant, retard ${t.clock(byMs)}`,
    } satisfies Sentences<CallCode>,

    spoken: {
      "bowl-ahead": ({ bowl, mix }) => `Bol ${bowl}, mélange ${mix} : à finir bientôt.`,
      "bowl-past": ({ bowl, mix }) => `Bol ${bowl}, mélange ${mix} : durée d’emploi dépassée, en refaire un.`,
      "heat-ahead": "Chaleur à ôter bientôt.",
      "heat-past": "Ôter la chaleur maintenant, puis contrôler.",
      "take-off": ({ foils, piece }) => `${who(foils, piece)} : retirer maintenant.`,
      "at-goal": ({ foils, piece }) => `${who(foils, piece)} : retirer maintenant.`,
      "planned-ahead": ({ foils, piece }) => `${who(foils, piece)} : retrait prévu bientôt.`,
      "planned-off": ({ foils, piece }) => `${who(foils, piece)} : retrait prévu maintenant.`,
      "toner-ahead": ({ zone }) => `${toners[zone]} : rincer bientôt.`,
      "toner-off": ({ zone }) => `${toners[zone]} : contrôler et rincer.`,
      "toner-limit-ahead": ({ zone }) => `${toners[zone]} : temps max bientôt.`,
      "toner-limit": ({ zone }) => `${toners[zone]} : rincer maintenant.`,
      "limit-ahead": ({ foils, piece }) => `${who(foils, piece)} : temps max bientôt.`,
      "limit-past": ({ foils, piece }) => `${who(foils, piece)} : retirer maintenant, temps max dépassé.`,
      "roots-ahead": ({ foils, piece, mix }) => `${who(foils, piece)} : bientôt la racine, mélange ${mix}.`,
      "roots-now": ({ foils, piece, mix }) => `${who(foils, piece)} : poser la racine, mélange ${mix}.`,
      "check-ahead": ({ foils, piece }) => `${who(foils, piece)} : contrôler bientôt.`,
      "check-now": ({ foils, piece }) => `${who(foils, piece)} : contrôler maintenant.`,
      "check-late": ({ foils, piece }) => `${who(foils, piece)} : contrôler maintenant.`,
    } satisfies Sentences<CallCode>,
  }
}

/** Foils by their numbers, three and more that follow each other as a span: "Foils 1 to 5, 8". */
export const foilsWords = (t: Tools, foils: readonly number[], piece?: Piece) =>
  `${t.capital(pieces(t).word(foils.length, piece))} ${t.runs(foils, (from, to) => `${from} à ${to}`)}`
