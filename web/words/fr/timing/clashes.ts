import type { FixCode } from "../../../core/fixes/fix"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { LiftsFirst } from "../../../core/lift/liftsFirst"
import type { GoalRefusal } from "../../../core/lift/scheduleReady"
import type { ConflictCode } from "../../../core/schedule/conflicts"
import type { HeatRefusal } from "../../../core/schedule/heatRefusal"
import type { TimingAssumption, TimingProblem } from "../../../core/schedule/timedPlan"
import type { OfPieces } from "../../pieceWords"
import { type Sentences, say } from "../../say"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"

/** What the clock finds: why there is none, what was assumed, what clashes, and what mends it. */
export const clashes = (t: Tools) => {
  const min = (minutes: number) => t.minutes(minutes, 1)
  const numbers = (foils: readonly number[]) => t.runs(foils, (from, to) => `${from} à ${to}`)
  /** What was given, agreeing with one foil or several: "papillote 3", "papillotes 3 à 5". */
  const { word, names } = pieces(t)
  const foils = (list: readonly number[]) => `${word(list.length)} ${numbers(list)}`
  const theFoils = (list: readonly number[]) =>
    `${t.count(list.length, { one: "la papillote", other: "les papillotes" })} ${numbers(list)}`
  const toTheFoils = (list: readonly number[], piece?: Piece) =>
    `${t.count(list.length, { one: "à la", other: "aux" })} ${word(list.length, piece)} ${numbers(list)}`
  const others = (count: number) =>
    count === 0 ? "" : t.count(count, { one: " (et # autre)", other: " (et # autres)" })

  const goals = {
    "from-off-scale": ({ level, darkest, lightest }) =>
      `La hauteur actuelle est ${t.number(level)} : l’échelle va de ${darkest} à ${lightest}.`,
    "to-off-scale": ({ level, darkest, lightest }) =>
      `La hauteur visée est ${t.number(level)} : l’échelle va de ${darkest} à ${lightest}.`,
    "not-lighter": "La hauteur visée doit être plus claire que la hauteur actuelle.",
  } satisfies Sentences<GoalRefusal>

  const orOverride = "Arrêtez la chaleur, ou dérogez à ce blocage par écrit."
  const heat = {
    "too-warm": ({ ceilingC, warmthC }) =>
      `Pas de chaleur : l’éclaircissement n’est pas calculé au-dessus de ${t.number(ceilingC)} °C, et ${t.number(warmthC)} °C ont été saisis. Réglez moins chaud.`,
    "not-on-sheet": "Pas de chaleur : la fiche produit ne la permet pas. Arrêtez la chaleur.",
    "strong-mix": ({ mix, volume }) =>
      `Pas de chaleur : le mélange ${mix} est fait à ${t.number(volume)} vol. ${orOverride}`,
    "at-hairline": `Pas de chaleur : il y a des papillotes à la lisière. ${orOverride}`,
    cushion: `Pas de chaleur : un coussin de crêpage se trouve près de la racine. ${orOverride}`,
    "longer-than-usual": ({ usualMostMin, askedMin }) =>
      `La chaleur dure d’habitude ${min(usualMostMin)} au plus : ${min(askedMin)} ont été saisies. ${orOverride}`,
    "too-long": ({ mostMin, askedMin }) =>
      `La fiche produit permet ${min(mostMin)} de chaleur au plus : ${min(askedMin)} ont été saisies. Raccourcissez-la.`,
    "no-minutes": "La chaleur doit durer plus de 0 minute.",
  } satisfies Sentences<HeatRefusal>

  const first = {
    hairline: "Les cheveux de la lisière s’éclaircissent d’abord : ils devraient être prêts",
    fine: "Les cheveux fins s’éclaircissent plus tôt : ils devraient être prêts",
  } satisfies Record<LiftsFirst, string>

  return {
    problems: {
      "no-foils": "Aucune papillote à minuter : tracez-en une d’abord.",
      hands: ({ count }) => `Une ou deux personnes peuvent être prévues, pas ${count}.`,
      "pace-share": "Le rythme d’une personne doit être au-dessus de 0.",
      "break-backwards": "Une pause doit finir après son début.",
      "foil-twice": ({ foil }) => `La papillote ${foil} est deux fois dans le plan.`,
      "foil-bare": ({ foil }) =>
        `Papillote ${foil} : rien n’est enduit ; commencez le produit plus près du cuir chevelu, ou enduisez plus de la mèche.`,
      "foil-pace": ({ foil, minutes }) =>
        `Papillote ${foil} : le rythme est ${t.number(minutes)} ; saisissez des minutes par papillote au-dessus de 0.`,
      "foil-limit": ({ foil }) => `Papillote ${foil} : le temps max du produit doit dépasser 0 minute.`,
      "roots-after-limit": ({ foil, afterMin, limitMin }) =>
        `Papillote ${foil} : la racine serait posée à ${t.minutes(afterMin)}, quand les pointes sont à leur temps max de ${t.minutes(limitMin)}. Posez-la plus tôt.`,
      "foil-mix": ({ foil, mix }) => `Papillote ${foil} : il n’y a pas de mélange ${mix}.`,
      "foil-ready": ({ foil, mix }) =>
        `Papillote ${foil} : avec le mélange ${mix}, on ne sait pas quand elle peut être prête.`,
      "no-bowl": ({ foil, mix }) => `Papillote ${foil} : aucun bol du mélange ${mix} ne la sert.`,
      "bowl-empty": ({ mix }) => `Mélange ${mix} : un bol doit contenir plus de 0 g.`,
      "bowl-pot-life": ({ mix }) => `Mélange ${mix} : sa durée d’emploi doit dépasser 0 minute.`,
      "checks-apart": "Les contrôles doivent être espacés de plus de 0 minute.",
      ...goals,
    } satisfies Sentences<TimingProblem>,

    assumed: {
      "lift-by-sheet": ({ fromLevel, toLevel }) =>
        `De la hauteur ${t.number(fromLevel)} à ${t.number(toLevel)} : les temps sont une estimation d’après l’éclaircissement de la fiche produit.`,
      "lift-by-strand": ({ fromLevel, toLevel }) =>
        `De la hauteur ${t.number(fromLevel)} à ${t.number(toLevel)} : les temps sont une estimation d’après la fiche produit et le test mèche.`,
      "no-levels": ({ low, high }) =>
        `Aucune hauteur saisie : les temps sont donc typiques (${t.spread(t.number(low), t.minutes(high))}, une hypothèse). Contrôlez la mèche.`,
      "lifts-first": ({ hair, low, high, lookMin }) =>
        `${first[hair]} en ${t.spread(t.number(low * 100), t.percent(high))} des minutes habituelles, une hypothèse. Premier contrôle à ${t.minutes(lookMin)} de pose.`,
      "roots-wait": ({ foil, byMin, others }) =>
        `Racine de la papillote ${foil}${others > 0 ? ` et de ${t.whole(others)} autres` : ""} : les mains y viennent jusqu’à ${t.minutes(byMin)} plus tard que prévu.`,
      "learnt-pace": "Rythme mesuré au fauteuil.",
      "heat-left-out": ({ why }) => `${say(heat, why)} La chaleur n’entre pas dans l’horloge.`,
      "heat-counted": ({ minutes, low, high }) =>
        `Les ${min(minutes)} de chaleur comptent ${t.spread(t.number(low, 1), t.number(high, 1))} fois plus vite que sans : contrôlez dès que la chaleur est ôtée.`,
      "no-sheet": ({ mix, product, limitMin }) =>
        `Mélange ${mix} : pas de fiche pour « ${product} » ; ${min(limitMin)} sont prises comme temps max.`,
    } satisfies Sentences<TimingAssumption>,
    alwaysCheck:
      "Contrôler tôt et souvent ; retirer ce qui est prêt. Ne jamais dépasser le temps maximum du fabricant.",

    heat,

    clashTitle: (count: number) =>
      count === 0 ? "Aucun conflit d’horaire" : t.count(count, { one: "# conflit", other: "# conflits" }),
    noFix: "Partline n’a pas de solution pour cela : modifiez le plan.",
    clashes: {
      "over-run": ({ foil, overMin, limitMin, others: more, piece }) =>
        `La ${names([foil], piece)} dépasserait de ${min(overMin)} son maximum de ${min(limitMin)} avant que toutes soient prêtes${others(more)}.`,
      "under-processed": ({ foil, onMin, needsMin, others: more, piece }) =>
        needsMin === null
          ? `La ${names([foil], piece)} poserait ${min(onMin)} et ne devrait pas être prête${others(more)}.`
          : `La ${names([foil], piece)} poserait ${min(onMin)} et devrait demander ${min(needsMin)}${others(more)}.`,
      "hairline-ahead": ({ waitMin }) =>
        waitMin === null
          ? "La lisière serait prête bien avant l’arrière, et resterait en pose jusqu’au rinçage commun."
          : `La lisière serait prête ${min(waitMin)} avant l’arrière, et resterait en pose jusqu’au rinçage commun.`,
      "pot-life": ({ mix, agedMin, potLifeMin }) =>
        `Un bol du mélange ${mix} servirait encore ${min(agedMin)} après le mélange ; sa durée d’emploi est de ${min(potLifeMin)}.`,
      booking: ({ chairMin: { low, mid, high }, bookingMin }) =>
        `Estimé : ${t.minutes(mid)} (${t.spread(t.whole(low), t.whole(high))}) ; ${t.minutes(bookingMin)} réservées.`,
    } satisfies Sentences<OfPieces<ConflictCode>>,

    /** On a button; undo calls the change the same. */
    fixes: {
      "each-off": ({ piece }) => `Retirer chaque ${word(1, piece)} quand elle est prête`,
      reorder: ({ piece }) => `Poser les ${word(2, piece)} dans un autre ordre, les plus lentes d’abord`,
      "weaker-early": ({ count, piece }) =>
        t.count(count, {
          one: `Oxydant plus faible pour la première ${word(1, piece)}`,
          other: `Oxydant plus faible pour les # premières ${word(2, piece)}`,
        }),
      "order-and-strength": ({ count, piece }) =>
        t.count(count, {
          one: `Un autre ordre, et un oxydant plus faible pour la première ${word(1, piece)}`,
          other: `Un autre ordre, et un oxydant plus faible pour les # premières ${word(2, piece)}`,
        }),
      "closest-together": ({ piece }) =>
        `Amener toutes les ${word(2, piece)} à la hauteur visée au plus près l’une de l’autre`,
      "fresh-bowl": ({ mixes, foils: at, piece }) =>
        t.count(mixes.length, {
          one: `Refaire un bol du mélange ${t.and(mixes)} ${toTheFoils(at, piece)}`,
          other: `Refaire un bol des mélanges ${t.and(mixes)} ${toTheFoils(at, piece)}`,
        }),
      "second-colourist": "Travailler avec un renfort",
      "no-drying": ({ savesMin }) => `Supprimer le séchage (${min(savesMin)})`,
      "later-end": ({ bookingMin, byMin }) =>
        `Réserver ${t.minutes(bookingMin)} : finir ${t.minutes(byMin)} plus tard`,
      "fewer-foils": ({ foils: list, piece }) =>
        t.count(list.length, {
          one: `Supprimer la ${word(1, piece)} ${numbers(list)}`,
          other: `Supprimer # ${word(2, piece)}, réparties des deux côtés : ${numbers(list)}`,
        }),
      "another-day": ({ foils: list, piece }) =>
        t.count(list.length, {
          one: `Garder la ${word(1, piece)} ${numbers(list)} pour un autre jour`,
          other: `Garder # ${word(2, piece)} pour un autre jour, réparties des deux côtés : ${numbers(list)}`,
        }),
    } satisfies Sentences<OfPieces<FixCode>>,

    search: {
      working: "Recherche de solutions",
      stop: "Arrêter",
      stopped: "La recherche a été arrêtée.",
      failed: "La recherche de solutions n’a pas démarré.",
      again: "Chercher encore",
    },
    closest: ({ nowMin, thenMin }: { nowMin: number; thenMin: number }, piece?: Piece) =>
      `Les ${word(2, piece)} devraient être prêtes sur ${t.minutes(nowMin)} ; dans un autre ordre, ou avec un oxydant plus faible d’abord, sur ${t.minutes(thenMin)}.`,

    setAside: {
      foils,
      another: ({ foils: list, plan }: { foils: readonly number[]; plan: string }) =>
        `Pour un autre jour : ${foils(list)}. Pas de mélange, d’horloge ni de schéma imprimé pour ce qui est mis de côté. Comme séance à part, cela passe dans « ${plan} » ; défaire le ramène ici et laisse ce plan où il est.`,
      /** The plan that they go to. */
      planName: (plan: string) => `${plan}, un autre jour`,
      bringBack: "Les ramener aujourd’hui",
      ownVisit: "En faire une séance à part",
      notMoved: (why: string) =>
        `Les papillotes restent ici : leur propre plan n’a pas été enregistré. ${why}`,
      moved: (plan: string) =>
        `Les papillotes pour un autre jour sont maintenant dans « ${plan} », sous « Plans ».`,
      open: "Ouvrir ce plan",
      notOpened: (why: string) => `Ce plan ne s’est pas ouvert : ${why}`,
      fresh: (list: readonly number[]) => `Un nouveau bol est mélangé pour ${theFoils(list)}.`,
      usualBowls: "Répartir les bols comme d’habitude",
      damp: "Les cheveux ne sont pas séchés au fauteuil.",
      dry: "Sécher quand même",
    },
  }
}
