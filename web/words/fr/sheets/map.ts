import type { Range } from "../../../../geometry/hair/tradeFigures"
import type { Direction } from "../../../../geometry/parting/direction"
import type { Plan } from "../../../core/document/schema"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"
import type { Names } from "./names"

/** The placement and formula map. */
export const map = (t: Tools, common: Names) => ({
  about: "Schéma de placement et formule",
  aboutMirror: "Schéma de placement et formule, face vue dans le miroir",
  /** The usual parting and the crown swirl, where either is known. */
  worn,

  /** In the head, as large as the numbers of the foils. */
  alerts: { stop: "PAS DE FEU VERT : NE PAS MÉLANGER", notAsked: "PAS DE FEU VERT : santé non demandée" },

  /** To be filled in by hand; the rule to write on is drawn. */
  tests: { strand: "Test mèche fait :", patch: "Touche d’essai lue négative le :" },

  bowls,
  toner: { title: "Patine, après rinçage" },
  working: working(t, common),
  painted: {
    title: "Mèches peintes, échelle 1 : 10",
    of: ({ widthMm, lengthMm, share }: { widthMm: number; lengthMm: number; share: number }) =>
      `${t.mm(widthMm)} × ${t.mm(lengthMm)}, ${t.percent(share)} peints`,
    key: "Depuis le bord : doux, milieu, plein.",
  },
  ruler: ruler(t, common),
  table: table(t, common),
  clock: clock(t),
})

const bowls = {
  title: "Bols, au chiffre haut",
  doneTitle: "Bols, tels que mélangés",
}

const working = (t: Tools, common: Names) => ({
  title: "Sections de la tête, dans l’ordre",
  row: ({
    name,
    foils,
    productG,
    placeMin,
  }: {
    name: string
    foils: readonly number[]
    productG: Range
    placeMin: Range | null
  }) =>
    [
      `${name} : ${common.foils(foils)}`,
      t.gramsRange(productG),
      ...(placeMin ? [`${t.spread(t.whole(placeMin.low), t.whole(placeMin.high))} min`] : []),
    ].join(" ; "),
  noFoils: (names: readonly string[]) => `${names.join(", ")} : sans papillote`,
  crossing: (names: readonly string[]) => `Dans deux sections : ${t.and(names)}`,
})

const ruler = (t: Tools, common: Names) => ({
  title: "Épaisseurs réelles",
  check: ["50 mm de long ; sinon,", "imprimer à 100 %"],
  depth: (mm: number) => t.mm(mm, 1),
  foils: common.foils,
  foilCount: common.foilCount,
  starts: "Début du produit, taille réelle",
  /** Where lightened hair may begin, off the scalp. */
  notPast: ({ low, high }: { low: number; high: number }) =>
    `éclairci dès ${t.spread(t.whole(low), t.mm(high))} : pas de produit après le trait`,
  stitches: "Maille/écart réels, mm",
  stitch: ({ stitchMm, gapMm, dipMm }: { stitchMm: number; gapMm: number; dipMm: number }) =>
    `${half(t, stitchMm)}/${half(t, gapMm)}, prof. ${half(t, dipMm)}`,
  scale: "50 mm sur la tête, dans chaque vue",
})

/** Halves are kept, since a slice is one to three millimetres deep. */
const half = (t: Tools, mm: number) => t.number(Math.round(mm * 2) / 2, 1)

const table = (t: Tools, common: Names) => ({
  /** What stands over each column, in one line or two. */
  heads: {
    order: ["Ordre"],
    number: ["N°"],
    side: ["Côté"],
    kind: ["Type"],
    foils: ["Pap."],
    lengthMm: ["Long.", "mm"],
    depthMm: ["Épais.", "mm"],
    direction: ["Séparation"],
    start: ["Début", "mm"],
    hairG: ["Chev.", "g"],
    lowG: ["bas"],
    midG: ["moy."],
    highG: ["haut"],
    mix: ["Mél."],
    on: ["Pose"],
    off: ["Retr."],
  } satisfies Record<string, readonly string[]>,
  product: "Produit, g",
  sides: { left: "gauche", right: "droite", centre: "centre" },
  kinds: { slice: "Tranche", weave: "Tricotage", backcomb: "Crêpage", painted: "Peinte" },
  half: (mm: number) => half(t, mm),
  /** The direction in the fewest words: what follows the hairline is parallel. */
  direction: (direction: Direction) =>
    direction.name === "parallel to hairline" ? "parallèle" : common.direction(direction),
  /** Where product starts, mm off the scalp, and to where along the strand. */
  start: (startMm: number, { from, to }: { from: number; to: number }) => {
    const start = from > 0 ? t.percent(from) : half(t, startMm)
    return to < 1 ? `${start} à ${t.percent(to)}` : start
  },
  carriers: { board: "planche", "open-air": "air libre", film: "film" },
  leftOut: (name: string) => (name ? `Laissée : ${name}` : "Laissée"),
  total: ({ foils, piece, areaCm2, hairs }: { foils: number; piece: Piece; areaCm2: number; hairs: Range }) =>
    `${pieces(t).count(foils, piece)}, ${t.area(areaCm2)} de cuir chevelu, ${t.spread(t.hairs(hairs.low), t.hairs(hairs.high))} cheveux`,
  takenTwice: (less: string) => `${less} ; hachures croisées sur le schéma.`,
  arrows:
    "Le produit va de son début (mm du cuir chevelu) aux pointes, sauf indication de la ligne. Flèches : sur le schéma, le sens de la papillote ; ici, comment la séparation descend, vue de ce côté.",
})

const clock = (t: Tools) => ({
  title: "Horloge, minutes depuis la première séparation",
  heads: { number: "N°", on: "Pose", ready: "Prête", off: "Limite" },
  key: "Barre : temps de pose, hachuré selon le mélange. Blanc : peut être prête. Trait fort : temps maximum. Pointillé : un contrôle. Triangle : mélanger ce bol. Prévu, pas promis : contrôler, et retirer ce qui est prêt.",
  rest: ({
    who,
    fromMin,
    toMin,
  }: {
    who: "all" | "colourist" | "assistant"
    fromMin: number
    toMin: number
  }) => `${resting[who]} de la minute ${t.whole(fromMin)} à ${t.whole(toMin)}.`,
  heat: ({ fromMin, toMin }: { fromMin: number; toMin: number }) =>
    `Chaleur de la minute ${t.whole(fromMin)} à ${t.whole(toMin)} : puis ôter, contrôler, refroidir.`,
  readyOpen: (low: number) => `${t.whole(low)}–?`,
})

const resting = { all: "Pause", colourist: "Coloriste en pause", assistant: "Renfort en pause" }

const worn = ({ wornParting, whorl }: Pick<Plan["head"], "wornParting" | "whorl">) =>
  [
    ...(wornParting
      ? [wornParting.kind === "side" ? sides[wornParting.side] : partings[wornParting.kind]]
      : []),
    ...(whorl ? [whorls[whorl.turns]] : []),
  ].join(", ")

const partings = { centre: "raie au milieu", zigzag: "raie en zigzag", none: "sans raie habituelle" }
const sides = { left: "raie à gauche", right: "raie à droite" }
const whorls = {
  clockwise: "épi du vertex horaire",
  anticlockwise: "épi du vertex antihoraire",
  none: "pas d’épi au vertex",
}
