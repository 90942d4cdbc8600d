import type { ChairRefusal } from "../../../core/chair/chairClock"
import type { ClockNote, TapNote, ToneZoneName } from "../../../core/document/serviceRecord"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { OfPieces } from "../../pieceWords"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"
import { buttons } from "./buttons"
import { calls, toners } from "./calls"
import { emergencies } from "./emergencies"
import { floor } from "./floor"

export const chair = (t: Tools) => ({
  title: "Au fauteuil",

  /** What undo calls a change of this chapter. */
  done: {
    "keep-service": "Enregistrer la prestation",
    "keep-alarm": "Enregistrer l’incident",
    "weigh-left": "Enregistrer le reste d’un bol",
  },

  /** Before minute 0. */
  start: {
    /** What is to come; the span is two lengths of time. */
    ahead: ({ foils, piece, bowls, span }: { foils: number; piece: Piece; bowls: number; span: string }) =>
      `${pieces(t).count(foils, piece)}, ${t.count(bowls, { one: "# bol", other: "# bols" })}, ${span} au fauteuil.`,
    begin: "Lancer l’horloge",
    clock: (piece: Piece): string =>
      ({
        foil: "L’horloge continue pendant un rechargement ou une mise en veille. Appuyez pour chaque papillote au moment où le produit touche les cheveux.",
        panel:
          "L’horloge continue pendant un rechargement ou une mise en veille. Appuyez pour chaque mèche au moment où le produit touche les cheveux.",
        both: "L’horloge continue pendant un rechargement ou une mise en veille. Appuyez pour chaque papillote et chaque mèche au moment où le produit touche les cheveux.",
      })[piece],
    reach:
      "Le temps maximum du fabricant est la limite. Restez à portée de la personne tant qu’il y a du produit.",
  },

  /** What this device cannot do. */
  device: {
    "no-vibration": "Cet appareil ne peut pas vibrer : laissez le son.",
    "no-sound": "Cet appareil n’a pas de son ici : gardez-le là où vous le sentez vibrer, ou le voyez.",
    neither: "Cet appareil n’a ici ni son ni vibration : gardez l’écran en vue.",
    "may-sleep":
      "L’écran de cet appareil peut s’éteindre : réglez-le pour rester allumé pendant la prestation.",
  },

  bar: {
    leave: "Quitter",
    alarmsStay: "alarmes actives",
    time: "Temps de la prestation",
    clock: t.clock,
    undo: buttons.undo,
    alarm: "Il y a un problème",
    notKept: (why: string) => `Non enregistré sur cet appareil : ${why}`,
    /** On every other screen, while a service goes on. */
    service: "Prestation en cours",
    nothingOn: (_: Piece): string => "Rien en pose",
    inOtherWindow: "dans une autre fenêtre",
    toChair: "Au fauteuil",
  },

  /** The chair of another plan, or of another window. */
  elsewhere: {
    otherPlan:
      "La prestation d’un autre plan est en cours dans cette fenêtre. Ouvrez ce plan dans une seconde fenêtre pour mener les deux.",
    toThat: "Vers cette prestation",
    controlled: "Cette prestation est commandée dans une autre fenêtre. Vous pouvez la suivre ici.",
    takeOver: buttons.takeOver,
    notOpened: (why: string) => `Le plan de cette prestation ne s’est pas ouvert : ${why}`,
  },

  /** Why a tap is not taken. */
  refusals: {
    "changed-in-another-window":
      "Une autre fenêtre a continué cette prestation. Vérifiez ce qu’elle montre, puis appuyez de nouveau.",
    "held-in-another-window": `Une autre fenêtre commande cette prestation. Appuyez d’abord sur « ${buttons.takeOver} ».`,
    "nothing-to-undo": "Il n’y a pas d’appui à défaire.",
    "no-such-foil": ({ piece }) => `Cette ${pieces(t).word(1, piece)} n’est pas dans cette prestation.`,
    "off-since": ({ foil, atMin, piece }) =>
      `La ${pieces(t).names([foil], piece)} est retirée depuis la minute ${t.number(atMin, 1)}.`,
    "on-since": ({ foil, atMin, piece }) =>
      `La ${pieces(t).names([foil], piece)} est posée depuis la minute ${t.number(atMin, 1)} ; son temps court de là.`,
    "no-later-roots": ({ foil, piece }) =>
      `La ${pieces(t).names([foil], piece)} n’a pas de racine à poser plus tard.`,
    "roots-on-since": ({ foil, atMin, piece }) =>
      `La ${pieces(t).names([foil], piece)} : racine posée depuis la minute ${t.number(atMin, 1)} ; son temps court de là.`,
    "never-on": ({ foil, piece }) =>
      `La ${pieces(t).names([foil], piece)} n’a jamais été notée posée, elle ne peut donc pas être retirée. Choisissez-la et appuyez d’abord sur « ${buttons.wentOnEarlier} ».`,
    "heat-never-on": `« ${buttons.heatOn} » n’a pas été noté, la chaleur ne peut donc pas être ôtée.`,
    "no-heat-planned": "Aucune chaleur n’est prévue.",
    "heat-once": ({ state, atMin }) =>
      state === "on"
        ? `La chaleur est mise depuis la minute ${t.number(atMin, 1)}. Elle ne sert qu’une fois.`
        : `La chaleur est ôtée depuis la minute ${t.number(atMin, 1)}. Elle ne sert qu’une fois.`,
    "toner-over": ({ zone }) => `${toners[zone]} : déjà rincé.`,
    "toner-on-since": ({ zone, atMin }) =>
      `${toners[zone]} : en pose depuis la minute ${t.number(atMin, 1)} ; le temps court de là.`,
    "toner-never-on": ({ zone }) =>
      `${toners[zone]} : appuyez d’abord sur « ${buttons.tonerOn(toners[zone])} ».`,
    "second-tap": "Second appui au même endroit en moins d’une seconde : ignoré.",
  } satisfies Sentences<OfPieces<ChairRefusal> | { code: "held-in-another-window" } | { code: "second-tap" }>,

  /** What to know of a tap that was taken. */
  notes: {
    "counts-from-earliest": ({ foil, fromMin, piece }) =>
      `La ${pieces(t).names([foil], piece)} n’a pas été notée posée ; son temps compte depuis la minute ${t.number(fromMin, 1)}, au plus tôt.`,
    "counts-from-now": ({ foil, fromMin, piece }) =>
      `La ${pieces(t).names([foil], piece)} compte à partir de maintenant. Si elle a été posée avant, appuyez sur « ${buttons.undo} », puis « ${buttons.wentOnEarlier} » : elle compte alors depuis la minute ${t.number(fromMin, 1)}.`,
    "in-words": ({ words }) => words,
  } satisfies Sentences<OfPieces<TapNote>>,

  clockNotes: {
    "clock-set-back": ({ byMs }) =>
      `L’heure de l’appareil a été reculée de ${t.duration(byMs)}. L’horloge de la prestation continue.`,
    "slept-or-set-forward": ({ byMs }) =>
      `L’appareil s’est mis en veille pendant ${t.duration(byMs)}, ou son heure a été avancée. Le temps le plus long est compté.`,
    "set-back-while-closed": ({ byMs, piece }) =>
      `L’heure de l’appareil a été reculée d’au moins ${t.duration(byMs)} pendant que cette page était fermée. Contrôlez chaque ${pieces(t).word(1, piece)} maintenant : elle peut être en pose depuis plus longtemps qu’affiché.`,
    "in-words": ({ words }) => words,
  } satisfies Sentences<OfPieces<ClockNote>>,

  /** Ending with foils on. */
  stillOn: (foils: readonly number[], piece?: Piece) =>
    `${t.capital(pieces(t).names(foils, piece))} encore en pose. Appuyez d’abord sur « ${buttons.off} » ou « ${buttons.rinseNow} ».`,
  tonerStillOn: (zones: readonly ToneZoneName[]) =>
    `${t.and(zones.map((zone) => toners[zone]))} : encore en pose. Appuyez d’abord sur « ${buttons.tonerOff} ».`,

  calls: calls(t),
  floor: floor(t),
  emergencies: emergencies(t),
})
