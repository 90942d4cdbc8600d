import type { HairlineFault } from "../../../../geometry/scalp/hairlineFault"
import type { HeadMeasureName } from "../../../../geometry/scalp/headSize"
import type { DrawingCode, FieldCode, FileCode } from "../../../core/fields/problem"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"
import { documents, fieldNames, ofDocuments } from "./fields"

const takeTwinOut = 'enlevez "twin" pour défaire la paire'

export const hairlineFaults: Record<HairlineFault, string> = {
  "crosses-itself": "la lisière se croiserait elle-même : gardez chaque point entre ses voisins",
  "over-ear": "la lisière passerait sur l’oreille : gardez-la autour de l’oreille",
  "on-face": "aucune lisière ne passe sous les sourcils ni sur la joue : gardez-la au-dessus",
  "off-scalp": "c’est hors du cuir chevelu : gardez la lisière sur la tête",
  "across-middle": "la lisière d’un côté traverserait le milieu de la tête : gardez-la de son côté",
}

const measures: Record<HeadMeasureName, string> = {
  lengthMm: "longueur de tête",
  breadthMm: "largeur de tête",
  heightMm: "hauteur de l’oreille au sommet",
  aroundMm: "tour de tête",
  overMm: "d’oreille à oreille par le dessus",
  frontToNapeMm: "de la lisière du front à la nuque",
}

/** How fields must go together. */
export const fieldFaults = (t: Tools): Sentences<FieldCode> => ({
  "extra-field": ({ field, document }) =>
    `"${field}" n’est pas un champ ${ofDocuments[document]} : enlevez-le`,
  taken: ({ value, firstPlace }) =>
    `attendu une valeur propre, mais ${value} est déjà pris au numéro ${t.whole(firstPlace)} de la liste`,
  "unknown-mix": ({ known, mix }) =>
    `attendu un des mélanges de la liste (${known.join(", ")}), trouvé ${mix}`,
  "twin-of-itself": `attendu une autre section, trouvé elle-même ; ${takeTwinOut}`,
  "twin-unknown": ({ twin }) => `attendu une section de ce plan, trouvé "${twin}" ; ${takeTwinOut}`,
  "twin-of-another": ({ id, twin, named }) =>
    named === null
      ? `attendu une section qui nomme "${id}" en retour, mais "${twin}" n’en nomme aucune ; ${takeTwinOut}`
      : `attendu une section qui nomme "${id}" en retour, mais "${twin}" nomme "${named}" ; ${takeTwinOut}`,
  "pair-of-one": ({ pair, found }) =>
    `attendu deux sections qui portent ${pair}, trouvé ${t.whole(found)} ; enlevez "pair" pour placer la section seule`,
  "pair-not-single": 'attendu "single": true à côté ; enlevez "pair" pour placer la section seule',
  "nothing-to-coat": ({ startMm, lengthCm }) =>
    `attendu un début avant la fin du produit, trouvé ${t.mm(startMm)} du cuir chevelu sur des cheveux de ${t.cm(lengthCm)} : commencez plus près, ou enduisez plus de la mèche`,
  "no-roots": ({ startMm, toMm }) =>
    `attendu plus que les ${t.mm(startMm)} où commence le produit, trouvé ${t.mm(toMm)} : faites finir la racine plus bas, ou enduisez tout d’un seul mélange`,
  "roots-first-later": ({ afterMin }) =>
    `attendu 0, ou les pointes en premier, trouvé ${t.minutes(afterMin)} après les pointes avec la racine en premier : posez d’abord les pointes, ou mettez 0 minute`,
  "no-ends": ({ toMm, lengthCm }) =>
    `attendu une fin avant celle des cheveux enduits, trouvé ${t.mm(toMm)} du cuir chevelu sur des cheveux de ${t.cm(lengthCm)} : faites finir la racine plus près, ou enduisez tout d’un seul mélange`,
  "one-mix-twice": ({ mix }) =>
    `attendu un autre mélange que sur le reste de la mèche, trouvé ${mix} sur les deux : choisissez-en un autre, ou enduisez tout d’un seul mélange`,
  "landmark-off-middle": ({ landmark }) =>
    `attendu ${landmark} déplacé des deux côtés et seulement vers le haut ou le bas du milieu`,
  "landmark-twice": ({ landmark, firstPlace }) =>
    `attendu chaque repère une fois par côté, mais ${landmark} est déplacé au numéro ${t.whole(firstPlace)} de la liste`,
  hairline: ({ fault, side }) =>
    side === "left" ? `à gauche : ${hairlineFaults[fault]}` : `à droite : ${hairlineFaults[fault]}`,
  "head-size": ({ measure, mm, least, greatest }) =>
    `${measures[measure]}, ${t.mm(mm, 1)} : ne va pas avec les deux autres ; d’habitude de ${t.number(least)} à ${t.mm(greatest)}`,
})

/** Why a text is no document at all. */
export const fileFaults = (t: Tools): Sentences<FileCode> => ({
  "too-large": ({ document, mostMb, foundMb }) =>
    `attendu ${documents[document]} de ${t.whole(mostMb)} Mo au plus, trouvé ${t.whole(foundMb)} Mo : est-ce un autre fichier ?`,
  empty: ({ document }) => `le fichier est vide : attendu ${documents[document]} de Partline`,
  "not-json": ({ document }) =>
    `le fichier est coupé ou n’est pas ${documents[document]} : enregistrez-le de nouveau là où il a été fait`,
  "no-number": ({ field, word }) => `${fieldNames[field] ?? field} : attendu un nombre, trouvé ${word}`,
  "another-kind": ({ document, kind }) =>
    `ce n’est pas ${documents[document]} de Partline : attendu "kind": "${kind}"`,
  version: ({ known }) => `attendu un nombre entier, ${t.whole(known)} actuellement`,
  "newer-version": ({ version, known }) =>
    `ce fichier est en version ${version} et ce Partline lit jusqu’à ${known} : ouvrez-le avec un Partline plus récent`,
  "more-like-these": ({ count }) =>
    t.count(count, {
      one: "et # autre problème du même genre",
      other: "et # autres problèmes du même genre",
    }),
  "damaged-link":
    "ce lien a été coupé ou altéré en chemin : redemandez-le, ou demandez la technique en fichier",
  "newer-link": "ce lien vient d’un Partline plus récent : ouvrez-le avec un Partline aussi récent",
  "too-large-link":
    "ce lien contient plus qu’il n’en faut pour une technique : demandez la technique en fichier",
  "not-on-shelf": "ce plan n’existe pas dans ce navigateur",
})

/** What makes a line impossible to comb, or to divide the head by. */
export const drawingFaults = (t: Tools): Sentences<DrawingCode> => ({
  "place-outside": "attendu un point à l’intérieur de la lisière, trouvé un point à l’extérieur",
  "line-outside": "attendu une ligne à l’intérieur de la lisière, trouvé une ligne qui en sort",
  "line-too-short": ({ leastMm, foundMm }) =>
    `attendu une ligne d’au moins ${t.mm(leastMm)}, trouvé ${t.mm(foundMm, 1)}`,
  "line-crosses-itself": "attendu une ligne qui ne se croise pas",
  "divider-too-short": ({ leastMm, foundMm }) =>
    `attendu une ligne d’au moins ${t.mm(leastMm)}, trouvé ${t.mm(foundMm, 1)} : tracez-la de nouveau`,
  "divider-crosses-itself": "attendu une ligne qui ne se croise pas : tracez-la de nouveau",
  "divider-on-another": ({ number }) =>
    `attendu une ligne à part, trouvé une ligne posée sur la ligne de section ${t.whole(number)} : déplacez-la ou retirez-la`,
  "divider-divides-nothing":
    "attendu une ligne d’un bord à l’autre, trouvé une ligne qui ne divise rien : prolongez-la jusqu’à la lisière ou à une autre ligne de section, ou retirez-la",
  "divider-past-edge": ({ pastMm }) =>
    `attendu une ligne qui finit sur un bord, trouvé ${t.mm(pastMm)} au-delà du dernier : finissez-la là, ou prolongez-la jusqu’au suivant`,
  "divider-touches-another":
    "attendu une ligne bien séparée des autres, trouvé une ligne qui en touche une : déplacez-la ou retirez-la",
  "working-section-too-small": ({ leastCm2, foundCm2 }) =>
    `attendu au moins ${t.number(leastCm2)} cm² de chaque côté, trouvé ${t.area(foundCm2)} : déplacez-la ou retirez-la`,
})
