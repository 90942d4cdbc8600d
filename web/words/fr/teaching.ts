import type { CarrierKind, FoilKind } from "../../../geometry/section/section"
import type { FaultName } from "../../../presets/sheets/teaching"
import type { FoilPlace } from "../../core/schedule/placesOf"
import type {
  AimCode,
  PieceCode,
  SelfCheckCode,
  TeachingTimeCode,
  ToolCode,
} from "../../core/teaching/teachingPlan"
import type { Sentences } from "../say"
import type { Tools } from "../tools"
import type { CommonWords } from "./common/common"
import { stepLabels, stepLines, stepTitles } from "./teachingSteps"

/** A technique as it is told to a class. */
export const teaching = (t: Tools, common: CommonWords) => ({
  done: {},
  aim: aim(t, common),
  tools: tools(t, common),
  times: times(t),
  checks: checks(t, common),
  faults,
  stepTitles: stepTitles(t, common),
  stepLabels,
  stepLines: stepLines(t, common),
  divide: "Diviser la tête",
})

const places: Record<FoilPlace, string> = {
  hairline: "la lisière",
  top: "le dessus",
  sides: "les côtés",
  back: "l’arrière",
}

const aim = (t: Tools, common: CommonWords) => {
  const things: Record<FoilKind, readonly [one: string, several: string]> = {
    slice: ["tranche", "tranches"],
    weave: ["tricotage", "tricotages"],
    backcomb: ["section crêpée", "sections crêpées"],
    painted: ["mèche peinte", "mèches peintes"],
  }
  const runs: Record<PieceCode["direction"], string> = {
    "parallel to hairline": "le long de la lisière",
    horizontal: "à l’horizontale",
    "diagonal forward": "en diagonale avant",
    "diagonal back": "en diagonale arrière",
    vertical: "à la verticale",
  }
  const piece = ({ kind, direction, isOne }: PieceCode) => `${things[kind][isOne ? 0 : 1]} ${runs[direction]}`
  return {
    "nothing-drawn": "Rien n’est encore tracé.",
    brighten: ({ places: where, foils, pieces }) =>
      t.count(foils, {
        one: `Éclairer ${t.and(where.map((each) => places[each]))} avec # section : ${t.and(pieces.map(piece))}.`,
        other: `Éclairer ${t.and(where.map((each) => places[each]))} avec # sections : ${t.and(pieces.map(piece))}.`,
      }),
    leave: ({ names }) => `Laisser : ${t.and(names.map((name) => name || common.kinds["left-out"]))}.`,
  } satisfies Sentences<AimCode>
}

const tools = (t: Tools, common: CommonWords) => {
  const carriers: Record<CarrierKind, (count: number) => string> = {
    foil: (count) => t.count(count, { one: "# papillote", other: "# papillotes" }),
    board: (count) => t.count(count, { one: "# planche", other: "# planches" }),
    "open-air": (count) => t.count(count, { one: "# mèche à l’air libre", other: "# mèches à l’air libre" }),
    film: (count) => t.count(count, { one: "# mèche sous film", other: "# mèches sous film" }),
  }
  const forms = {
    powder: "poudre décolorante",
    clay: "argile décolorante",
    cream: "crème décolorante",
    liquid: "décolorant liquide",
  }
  return {
    comb: "Peigne à queue, vaporisateur d’eau, un pinceau par bol",
    "section-clips": ({ count }) =>
      `Pinces : ${t.whole(count)}, une par section de la tête ; non métalliques près du produit`,
    clips: ({ low, high }) =>
      `Pinces : ${t.spread(t.whole(low), t.whole(high))} ; non métalliques près du produit`,
    carriers: ({ carrier, count, widthMm, lengthMm }) =>
      carrier === "open-air" || carrier === "film"
        ? carriers[carrier](count)
        : `${carriers[carrier](count)}, ${t.whole(widthMm)} × ${t.mm(lengthMm)}`,
    mix: ({ mix, form, developerVolume, ratio }) =>
      t.capital(
        `${common.mix(mix)} : ${form ? forms[form] : "produit selon son mode d’emploi"}, ${t.number(developerVolume)} vol, ${t.number(ratio.lightener)} : ${t.number(ratio.developer)}`,
      ),
    bowls: ({ count }) =>
      t.count(count, {
        one: "# bol non métallique, couvert sans serrer ; balance",
        other: "# bols non métalliques, couverts sans serrer ; balance",
      }),
    keeping: "Gants, protection des yeux, tablier, serviette, coton humide pour la lisière",
    minding: ({ piece }) =>
      `Minuteur ; crayon pour noter la pose de ${{ foil: "chaque papillote", panel: "chaque mèche", both: "chaque papillote et mèche" }[piece]}`,
  } satisfies Sentences<ToolCode>
}

const times = (t: Tools) =>
  ({
    "first-check": ({ firstMin, delicateMin, everyMin, piece }) =>
      `Premier contrôle ${t.minutes(firstMin)} après la pose de ${{ foil: "la première papillote", panel: "la première mèche", both: "la première" }[piece]}, ${t.minutes(delicateMin)} à la lisière et sur cheveux fins, poreux ou éclaircis ; ensuite toutes les ${t.minutes(everyMin)} (pratique courante). Le mode d’emploi du fabricant passe en premier.`,
    "max-time": ({ mix, maxMin, isFromSheet, firstCheckMin }) =>
      [
        isFromSheet
          ? `Mélange ${mix} : temps max ${t.minutes(maxMin)} (selon sa fiche produit).`
          : `Mélange ${mix} : temps max ${t.minutes(maxMin)} (pratique courante ; aucune fiche ne le dit). Lire d’abord le mode d’emploi.`,
        ...(firstCheckMin ? [`Premier contrôle après ${t.minutes(firstCheckMin)}.`] : []),
      ].join(" "),
    "each-foil": ({ piece }) =>
      `Le temps de ${{ foil: "chaque papillote", panel: "chaque mèche", both: "chaque papillote et mèche" }[piece]} court dès que son produit touche les cheveux : noter cette minute, et retirer chacune quand elle est prête.`,
    "learner-pace": ({ lowMin, highMin, foils }) =>
      t.count(foils, {
        one: `Au rythme débutant, ${t.spread(t.number(lowMin), t.minutes(highMin, 1))} par papillote, # papillote demande ${t.spread(t.whole(lowMin * foils), t.minutes(highMin * foils))} de placement (pratique courante).`,
        other: `Au rythme débutant, ${t.spread(t.number(lowMin), t.minutes(highMin, 1))} par papillote, # papillotes demandent ${t.spread(t.whole(lowMin * foils), t.minutes(highMin * foils))} de placement (pratique courante).`,
      }),
  }) satisfies Sentences<TeachingTimeCode>

const mostNumbered = 8

const checks = (t: Tools, common: CommonWords) =>
  ({
    "see-through": ({ slices }) =>
      slices.length > mostNumbered
        ? "Je vois la lumière à travers chaque tranche fine."
        : t.count(slices.length, {
            one: `Je vois la lumière à travers la tranche ${t.and(slices.map(t.whole))}.`,
            other: `Je vois la lumière à travers les tranches ${t.and(slices.map(t.whole))}.`,
          }),
    "even-stitches": ({ stitchMm, gapMm, weave }) =>
      `Mes mailles sont régulières : ${t.mm(stitchMm, 1)} prises, ${t.mm(gapMm, 1)} laissés, tout le long du tricotage ${t.whole(weave)}.`,
    "cushion-dry": "Le coussin est sec ; le produit commence après lui.",
    "product-start": ({ rootMm }) =>
      `Le produit commence à ${t.mm(rootMm, 1)} ou plus du cuir chevelu ; il n’y en a pas sur la peau.`,
    "both-faces": "Les deux faces de chaque mèche sont enduites, sans endroit sec.",
    "left-out-dry": ({ names }) =>
      `Laissé et encore sec : ${t.and(names.map((name) => name || common.kinds["left-out"]))}.`,
    "sides-match": "Gauche et droite concordent dans le miroir.",
    "minutes-noted": ({ piece }) =>
      `J’ai noté la minute de pose de ${{ foil: "chaque papillote", panel: "chaque mèche", both: "chaque papillote et mèche" }[piece]} et contrôlé à temps.`,
    "foils-sound": "Aucune papillote ne glisse ni ne gonfle, aucune n’est chaude.",
  }) satisfies Sentences<SelfCheckCode>

/** A fault, what it comes from, and what to do about it. */
const faults: Record<FaultName, { fault: string; cause: string; cure: string }> = {
  "bleeding-root": {
    fault: "Coulure à la racine",
    cause: "Trop de produit, ou il commence au bord même de la papillote.",
    cure: "Moins sur le pinceau ; garder le pli propre ; essuyer le bord avant de fermer.",
  },
  "band-near-root": {
    fault: "Une barre près de la racine",
    cause: "Le produit s’arrête trop tôt, ou la papillote a glissé.",
    cure: "Placer la papillote où commence le plan, et l’y presser en appliquant.",
  },
  "dark-spots": {
    fault: "Taches foncées dedans",
    cause: "Endroits secs : une seule face enduite, ou cheveux mal étalés.",
    cure: "Étaler les cheveux, enduire les deux faces, regarder à contre-jour.",
  },
  "slice-too-deep": {
    fault: "Tranche trop épaisse",
    cause: "La queue du peigne a pris des cheveux derrière la séparation.",
    cure: "Séparer de nouveau. Une tranche fine laisse voir la lumière.",
  },
  "last-foil-dark": {
    fault: "Dernière trop foncée",
    cause: "Posée bien après la première, elle a été retirée avec elle.",
    cure: "Retirer chaque papillote quand elle est prête, pas toutes ensemble.",
  },
  "last-panel-dark": {
    fault: "Dernière mèche trop foncée",
    cause: "Peinte bien après la première, elle a été retirée avec elle.",
    cure: "Retirer chaque mèche quand elle est prête, pas toutes ensemble.",
  },
  "foil-slipping": {
    fault: "Papillote qui glisse",
    cause: "Papillote trop lourde pour la section, ou racine mouillée de produit.",
    cure: "Une papillote plus courte, pliée une fois ; commencer le produit un peu plus bas.",
  },
  "cushion-wet": {
    fault: "Coussin mouillé",
    cause: "Le produit a atteint le crêpage.",
    cure: "Essuyer ; commencer après le coussin, sur les cheveux lisses.",
  },
}
