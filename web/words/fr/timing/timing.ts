import type { ViewName } from "../../../../geometry/surface/views"
import type { ToneZoneName } from "../../../core/document/serviceRecord"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { Tools } from "../../tools"
import { clashes } from "./clashes"
import { settings } from "./settings"

export const timing = (t: Tools) => {
  const found = clashes(t)
  return {
    title: "Minutage",
    none: "Pourquoi pas d’horloge",
    toPlacement: "Tracer la première",
    toChair: "Démarrer au fauteuil",

    /** What undo calls a change of this chapter. */
    done: {
      ...found.fixes,
      "set-pace": "Modifier le rythme",
      "set-hands": "Modifier qui travaille",
      "set-people": "Modifier les noms",
      "set-side": "Modifier le côté du renfort",
      "set-rinse": "Modifier le retrait des papillotes",
      "set-lift": "Modifier les hauteurs",
      "set-booking": "Modifier la durée du rendez-vous",
      "set-drying": "Modifier le séchage",
      "set-heat": "Modifier la chaleur",
      "set-breaks": "Modifier les pauses",
      "learn-pace": "Planifier au rythme mesuré",
      "learn-second-pace": "Planifier le renfort au rythme mesuré",
      "set-strand": "Enregistrer un test mèche",
      "remove-strand": "Retirer le test mèche",
      "bring-back": "Ramener les papillotes d’un autre jour",
      "own-visit": "Passer les papillotes d’un autre jour dans un plan à part",
      "usual-bowls": "Répartir les bols comme d’habitude",
      "next-time": "Enregistrer la note pour la prochaine fois",
    },

    figures: {
      lastOn: (_: Piece): string => "Dernière posée",
      firstCheck: "Premier contrôle",
      lastOff: (_: Piece): string => "Dernière retirée",
      inChair: "Au fauteuil",
      /** A minute of the visit, counted from the first parting. */
      minute: (min: number) => `minute ${t.whole(min)}`,
      noCheck: "–",
      /** A stretch of time, to five minutes: "1 h 40 to 2 h 25". */
      span: ({ low, high }: { low: number; high: number }) => {
        const [from, to] = [hours(t, low), hours(t, high)]
        return from === to ? from : `${from} à ${to}`
      },
    },

    chart: {
      title: "Minute par minute",
      name: "Graphique de la séance ; le tableau ci-dessous dit la même chose",
      min: "min",
      break: "pause",
      firstRests: "coloriste en pause",
      secondRests: "renfort en pause",
      heat: "chaleur",
      key: ({ limit }: { limit: string }) =>
        `Barre : temps de pose. Contour : peut être prête. ${limit} : temps maximum. Pointillé : un contrôle. Triangle : mélanger ce bol.`,
      limit: "Trait rouge",
    },

    head: {
      title: "La tête à une minute",
      slider: "Minute de la séance",
      views: {
        front: "Face",
        right: "Sa droite",
        left: "Sa gauche",
        back: "Arrière",
        top: "Dessus",
      } satisfies Record<Exclude<ViewName, "turned" | "unrolled">, string>,
      key: "Plus foncé = pose plus longue ; noir = temps maximum. Pointillé = pas encore posée. Contour = retirée. Montre le temps, pas le résultat.",
      onMap: "Voir sur le grand schéma",
    },

    table: {
      title: (piece: Piece): string =>
        ({ foil: "Temps par papillote", panel: "Temps par mèche", both: "Temps par papillote et par mèche" })[
          piece
        ],
      name: (piece: Piece): string =>
        ({
          foil: "Temps de chaque papillote",
          panel: "Temps de chaque mèche",
          both: "Temps de chaque papillote et mèche",
        })[piece],
      foil: (piece: Piece): string =>
        ({ foil: "Papillote", panel: "Mèche", both: "Papillote ou mèche" })[piece],
      on: "Pose",
      check: "Contrôle",
      ready: "Prête de–à",
      off: "Retrait",
      limit: "Temps max (limite)",
      minutesOn: "Min de pose",
      what: ({ kind, place }: { kind: string; place: string }) => `${t.capital(kind)}, ${place}`,
      none: "–",
      readyRange: ({ low, high }: { low: number; high: number }) => {
        if (Number.isFinite(high)) return t.spread(t.whole(low), t.whole(high))
        return Number.isFinite(low) ? `${t.whole(low)} ou pas à temps` : "pas à temps"
      },
      minute: t.whole,
    },

    after: {
      title: (piece: Piece): string =>
        ({
          foil: "Après la dernière papillote",
          panel: "Après la dernière mèche",
          both: "Après la dernière papillote ou mèche",
        })[piece],
      rinse: "Rincer",
      detangle: "Démêler le crêpage, mouillé, en partant des pointes",
      dry: "Sécher",
      toners: {
        "root-melt": "Fondu racine",
        mids: "Patine, longueurs",
        hairline: "Patine, lisière",
      } satisfies Record<ToneZoneName, string>,
      line: ({ what, from, to }: { what: string; from: number; to: number }) =>
        `${what} : minute ${t.whole(from)} à ${t.whole(to)}`,
    },

    strand: {
      title: "Test mèche",
      testedIn: "Testé avec",
      mix: ({ mix, volume }: { mix: string; volume: number }) => `Mélange ${mix}, ${t.number(volume)} vol`,
      otherMix: ({ product, volume }: { product: string; volume: number }) =>
        `Une mèche a été testée (${product}, ${t.number(volume)} vol). Aucun mélange n’est fait ainsi maintenant ; elle renseigne quand même sur les cheveux.`,
      before: "Hauteur de la mèche avant",
      remove: "Retirer le test",
      add: "Ajouter un contrôle de la mèche",
      minutes: "Min de pose",
      level: "Hauteur vue",
      removeRow: "Retirer",
      noCurve: (mix: string) =>
        `${mix} : la fiche n’indique pas d’éclaircissement pour cet oxydant, donc pas de courbe. Contrôlez la mèche et notez.`,
      untilThen: (fault: string) => `${fault} Jusque-là, la courbe est celle de la fiche.`,
      noGoal: "Saisissez la hauteur visée ; les minutes de contrôle suivront.",
      curve: "Courbe",
      curveName: (mix: string) =>
        `Courbe d’éclaircissement (${mix}) selon les minutes de pose ; la phrase au-dessus dit ce qui en découle`,
      key: "Trait : la médiane. Bande : quatre têtes sur cinq. Tirets : la hauteur visée. Une estimation, jamais une promesse : ce sont les cheveux qui décident.",
      dots: "Points : la mèche.",
      borrowed: "D’après la mèche dans l’autre mélange : ce sont les mêmes cheveux.",
      misfit: "La mèche suit mal la courbe : contrôlez plus souvent.",
      minutesOn: "minutes de pose",
    },

    actual: {
      title: "Prévu et réel",
      when: (wallMs: number) =>
        `${t.dayAndTime(wallMs)}. Les minutes se comptent depuis la première séparation.`,
      name: (piece: Piece): string =>
        ({
          foil: "Temps prévus et réels de chaque papillote",
          panel: "Temps prévus et réels de chaque mèche",
          both: "Temps prévus et réels de chaque papillote et mèche",
        })[piece],
      foil: (piece: Piece): string =>
        ({ foil: "Papillote", panel: "Mèche", both: "Papillote ou mèche" })[piece],
      onPlanned: "Pose, prévue",
      onActual: "Pose, réelle",
      minutesPlanned: "Min de pose, prévues",
      minutesActual: "Min de pose, réelles",
      notOn: "pas posée",
      none: "–",
      minute: t.whole,
    },

    lessons: {
      title: "Rythme au fauteuil",
      name: "Minutes par papillote, selon la personne et le type",
      who: "Qui",
      timed: "Minutées",
      kind: (kind: string) => `${t.capital(kind)}, min`,
      noName: "Sans nom",
      foils: ({ foils, services }: { foils: number; services: number }) =>
        `${t.whole(foils)} en ${t.count(services, { one: "# prestation", other: "# prestations" })}`,
      range: ({ low, high }: { low: number; high: number }) => t.spread(t.fixed(low, 1), t.fixed(high, 1)),
      none: "–",
      planWith: (person: string) => (person ? `Planifier au rythme : ${person}` : "Planifier à ce rythme"),
      asAssistant: (person: string) => (person ? `${person} en renfort` : "Renfort à ce rythme"),
    },

    alarms: {
      title: "Incidents",
      line: ({ wallMs, what }: { wallMs: number; what: string }) => `${t.dayAndTime(wallMs)} : ${what}`,
    },

    nextTime: {
      title: "Prochaine fois",
      where: "S’imprime sur la fiche client, pas sur le schéma.",
    },

    /** What the headless command says of its figures. */
    command: {
      lift: "Les temps « prête » sont une estimation d’après l’éclaircissement de la fiche produit. Un test mèche la resserre ; contrôlez, et retirez ce qui est prêt.",
      noLift:
        "Sans --from ni --to, les temps « prête » sont typiques (une hypothèse). Contrôlez, et retirez ce qui est prêt.",
    },

    assumedTitle: "Ce qui est supposé",
    ...found,
    settings: settings(t),
  }
}

function hours(t: Tools, min: number): string {
  const rounded = Math.round(min / 5) * 5
  const [whole, rest] = [Math.floor(rounded / 60), rounded % 60]
  if (whole === 0) return t.minutes(rest)
  return rest === 0 ? `${whole} h` : `${whole} h ${rest}`
}
