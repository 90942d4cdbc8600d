import type { DirectionName } from "../../../../geometry/parting/direction"
import type { LandmarkName } from "../../../../geometry/scalp/hairlineLandmarks"
import type { SectionKind } from "../../../../geometry/section/section"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { NudgeWay } from "../../../core/placement/tools"
import type { Tools } from "../../tools"
import { articles } from "../common/articles"
import type { CommonWords } from "../common/common"
import { hairlineDone, stackDone, workingDone } from "./doneParts"

/** What undo calls a change of this chapter. */
export const done = (t: Tools, names: CommonWords) => {
  const { kinds, landmark, directions } = names
  const { the } = articles(t, names)
  const count = (verb: string, sections: number) =>
    t.count(sections, { one: `${verb} une section`, other: `${verb} # sections` })
  return {
    ...hairlineDone(names),
    ...workingDone(t, names),
    ...stackDone(t, names),
    "draw-section": ({ kind }: { kind: SectionKind }) => `Tracer : ${kinds[kind]}`,
    "add-along-hairline": ({
      kind,
      side,
      from,
      to,
    }: {
      kind: SectionKind
      side: "left" | "right"
      from: LandmarkName
      to: LandmarkName
    }) =>
      `Ajouter : ${kinds[kind]}, ${landmark({ landmark: from, side })} – ${landmark({ landmark: to, side })}`,
    "change-kind": ({ kind }: { kind: SectionKind }) => `Changer en ${kinds[kind]}`,
    rename: ({ section }: { section: SectionNameCode }) => `Renommer ${the(section)}`,
    split: ({ section }: { section: SectionNameCode }) => `Diviser ${the(section)} en papillotes`,
    reduce: ({ section }: { section: SectionNameCode }) => `Réduire ${the(section)}`,
    "set-depth": "Modifier l’épaisseur",
    "take-hair": ({ taken }: { taken: "front" | "behind" }) =>
      taken === "front" ? "Prendre les cheveux devant" : "Prendre les cheveux derrière",
    "set-stitch": "Modifier la maille",
    "set-gap": "Modifier l’écart",
    "set-dip": "Modifier la profondeur",
    "set-base": ({ base }: { base: "slice" | "weave" }) =>
      base === "slice" ? "Crêper à partir d’une tranche" : "Crêper à partir d’un tricotage",
    "set-pushed-share": "Modifier la part crêpée",
    "set-cushion": "Modifier le coussin",
    "set-edge": "Modifier le bord peint",
    "draw-edge": "Tracer le bord peint",
    "set-edge-high": "Modifier le début de la peinture",
    "set-edge-drop": "Modifier la descente du bord",
    "set-feather": "Modifier l’estompe",
    "set-saturation": "Modifier la saturation",
    "set-note": "Modifier la note",
    "set-map-number": "Renuméroter",
    "set-start": "Modifier le début du produit",
    "set-coated": "Modifier la partie enduite",
    "set-faces": "Modifier les faces enduites",
    "set-carrier": "Modifier l’enveloppe",
    "set-elevation": "Modifier l’élévation",
    "set-over-direction": "Modifier la surdirection",
    "set-foil-lie": "Modifier le sens de la papillote",
    "set-roots-mix": "Modifier le mélange à la racine",
    "set-roots-end": "Modifier la fin de la racine",
    "set-roots-order": "Modifier l’ordre des mélanges",
    "set-roots-after": "Modifier le moment de la racine",
    "use-mix": ({ mix }: { mix: string }) => `Prendre le mélange ${mix}`,
    "set-behind": "Déplacer derrière la lisière",
    "set-along": "Déplacer le long de la lisière",
    "set-length": "Modifier la longueur",
    "set-angle": "Tourner",
    "set-direction": ({ direction }: { direction: DirectionName }) => `Tourner : ${directions[direction]}`,
    "repeat-behind": "Répéter derrière",
    "repeat-behind-both": "Répéter derrière, des deux côtés",
    thinner: "Plus fine",
    thicker: "Plus épaisse",
    mirror: "Miroir de l’autre côté",
    "break-pair": "Défaire la paire",
    "towards-hairline": "Rapprocher de la lisière",
    "away-from-hairline": "Éloigner de la lisière",
    "leave-between": "Laisser les cheveux entre deux",
    "leave-veil": "Laisser un voile",
    "leave-baby-hairs": "Laisser les follets",
    delete: ({ count: sections }: { count: number }) => count("Supprimer", sections),
    paste: ({ count: sections }: { count: number }) => count("Coller", sections),
    move: "Déplacer",
    bend: "Courber",
    nudge: ({ mm, way }: { mm: number; way: NudgeWay }) => nudges[way](t.mm(mm)),
    "number-in-order": "Numéroter dans l’ordre de pose",
    /** Where sections go on after they were moved in the order. */
    "apply-at": ({
      section,
      count: sections,
      place,
      foils,
    }: {
      section: SectionNameCode
      count: number
      place: number
      foils: number
    }) =>
      sections === 1
        ? `${t.capital(the(section))} se pose en ${ordinal(place)} sur ${t.whole(foils)}`
        : `${t.whole(sections)} sections à partir de ${the(section)} se posent en ${ordinal(place)} sur ${t.whole(foils)}`,
    "apply-left-out": ({ section, count: sections, before, foils }: AppliedLeftOut) =>
      sections === 1
        ? `${t.capital(the(section))} vient après ${t.whole(before)} papillotes sur ${t.whole(foils)}`
        : `${t.whole(sections)} sections à partir de ${the(section)} viennent après ${t.whole(before)} papillotes sur ${t.whole(foils)}`,
    "place-technique": ({ name }: { name: string }) => `Placer la technique « ${name} »`,
  }

  function ordinal(place: number) {
    return t.ordinal(place, { one: "#re", other: "#e" })
  }
}

const nudges: Record<NudgeWay, (mm: string) => string> = {
  away: (mm) => `Éloigner de ${mm} de la lisière`,
  towards: (mm) => `Rapprocher de ${mm} de la lisière`,
  right: (mm) => `Déplacer de ${mm} le long de la lisière, vers la droite de la personne`,
  left: (mm) => `Déplacer de ${mm} le long de la lisière, vers la gauche de la personne`,
}

type AppliedLeftOut = { section: SectionNameCode; count: number; before: number; foils: number }
