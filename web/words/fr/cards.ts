import { visitLimits } from "../../../presets/timing/visitLimits"
import type { ComesFor } from "../../core/calendar/daysToCome"
import { coatLetters } from "../../core/placement/coatCodes"
import type { CardsWords } from "../en/cards"
import type { Tools } from "../tools"
import { pieces } from "./common/pieces"

/** The client over time: cards, the visit before, and what has grown since. */
export const cards = (t: Tools): CardsWords => ({
  done: {
    "put-on-card": "Mettre le plan sur une carte",
    regrow: "Choisir quoi faire de la repousse",
    "propose-regrowth": "Proposer la repousse",
    "measure-regrowth": "Mesurer la repousse",
  },
  title: "Clientèle",
  open: "Clientèle…",
  find: "Chercher une carte",
  order: "Trier par",
  orders: { name: "Nom", last: "Dernière visite", due: "Prochaine visite" },
  newName: "Initiales ou nom",
  make: "Nouvelle carte",
  none: "Pas encore de carte. Les cartes restent dans ce navigateur.",
  nothingFound: "Aucune carte trouvée.",
  more: (count) => t.count(count, { one: "Afficher # de plus", other: "Afficher # de plus" }),
  lastDay: (day) => (day === null ? "pas encore de visite" : `dernière visite : ${t.date(day)}`),
  due: (due) =>
    due.planned
      ? `prévue le ${t.date(due.day)}`
      : due.from === due.to
        ? `à revoir le ${t.date(due.from)}`
        : `à revoir ${t.days(due.from, due.to)}`,
  all: "Toutes les cartes",
  unread: (why) => `Cette carte est illisible et reste telle quelle. ${why}`,
  import: {
    open: "Importer des noms…",
    file: "Fichier de noms",
    how: "Un fichier texte ou CSV : un nom par ligne, ou un tableau avec les colonnes nom, téléphone, note.",
    found: (count) => t.count(count, { one: "# nouveau nom", other: "# nouveaux noms" }),
    known: (count) => t.count(count, { one: "# est déjà là", other: "# sont déjà là" }),
    empty: (count) => t.count(count, { one: "# ligne sans nom", other: "# lignes sans nom" }),
    unfit: (rows) => `lignes qui ne tiennent pas sur une carte : ${rows.join(", ")}`,
    left: (count) => t.count(count, { one: "# ligne de trop", other: "# lignes de trop" }),
    told: (items) => `${t.capital(t.and(items))}.`,
    take: (count) => t.count(count, { one: "Créer # carte", other: "Créer # cartes" }),
    tooLarge: (mostMb) => `Ce fichier dépasse ${mostMb} Mo. Rien n’en a été lu.`,
  },
  card: {
    name: "Initiales ou nom",
    phone: "Téléphone",
    colour: "Couleur de la carte",
    colours: { none: "Aucune", blue: "Bleu", orange: "Orange", green: "Vert", purple: "Violet" },
    sheetLanguage: "Langue des fiches remises",
    note: "Notes",
    consent: "Accord pour conserver cette carte",
    consentOn: (day) => `Dit le ${t.date(day)}.`,
  },
  allergies: {
    title: "Allergies connues",
    why: "Elles arrêtent chaque plan de cette carte tant qu’elles ne sont pas confirmées le jour même. Une réponse du jour n’en retire aucune.",
    kind: "Allergie à",
    kinds: { dye: "Coloration ou décolorant", other: "Autre chose", "not-known": "Inconnu" },
    to: "À quoi",
    since: "Depuis quand",
    add: "Ajouter une allergie",
    remove: (to) => `Retirer l’allergie ${to}`.trim(),
  },
  visits: {
    title: "Visites",
    none: "Aucun plan n’est encore sur cette carte.",
    line: ({ day, served }) => `${day === null ? "sans date" : t.date(day)}, ${served ? "faite" : "prévue"}`,
    openNow: "ouvert",
    next: "Prochaine visite, aujourd’hui",
    nextHow: "Un nouveau plan pour aujourd’hui d’après le dernier. Ce qui est du jour est redemandé.",
    putHere: "Mettre le plan ouvert sur cette carte",
    takeOff: "Retirer le plan ouvert de cette carte",
  },
  calendar: {
    add: "Ajouter à un agenda",
    holds: "Un fichier avec les initiales et les jours, rien d’autre. Chacun est rappelé la veille.",
    fileName: "jours",
    title: ({ what, isTest }, initials) => {
      const days = {
        visit: "Visite",
        toner: "Patine à refaire",
        frame: "Contour à refaire",
      } satisfies Record<ComesFor, string>
      return [isTest ? "Touche d’essai à faire au plus tard" : days[what], initials]
        .filter((part) => part !== "")
        .join(" : ")
    },
    text: ({ isTest, day, until }) =>
      isTest
        ? `Au moins ${visitLimits.alertTestHours} heures avant la visite, et plus longtemps si le fabricant le dit.`
        : until === null
          ? "Ce qui est du jour est redemandé."
          : `Entre le ${t.date(day)} et le ${t.date(until)}.`,
  },
  merge: {
    title: "Réunir avec une autre carte",
    how: "Pour deux cartes d’une même personne. Notes, allergies et visites des deux restent.",
    ask: (one, other) =>
      `${one} et ${other} deviennent une seule carte au nom de ${one}. C’est irréversible.`,
    do: "Réunir",
  },
  remove: {
    open: "Supprimer cette carte",
    ask: (name, plans) =>
      plans === 0
        ? `La carte de ${name} est supprimée pour de bon, avec ses notes et allergies.`
        : `La carte de ${name} est supprimée pour de bon, avec ses notes et allergies. ${t.count(plans, {
            one: "Son # plan reste parmi les plans, sans carte.",
            other: "Ses # plans restent parmi les plans, sans carte.",
          })}`,
    do: "Supprimer pour de bon",
  },
  rights: {
    title: "Ce qui est conservé de cette carte",
    saveFile: "Enregistrer tout de cette carte",
    savePage: "L’enregistrer comme page à lire",
    holds:
      "Les deux contiennent les réponses de santé et ne sont pas verrouillés. Partline rouvre le fichier ; la page est à lire. Une prestation en cours au fauteuil n’est dans aucun des deux.",
    erase: "Effacer tout de cette carte pour de bon",
    ask: (name, plans) =>
      plans === 0
        ? `La carte de ${name} est effacée pour de bon, avec ses notes et allergies.`
        : `La carte de ${name} est effacée pour de bon, avec ses notes et allergies, et ${t.count(plans, {
            one: "son # plan, avec tout ce qui a été répondu, fait et vu, corbeille comprise.",
            other: "ses # plans, avec tout ce qui a été répondu, fait et vu, corbeille comprise.",
          })}`,
    stays:
      "Restent les techniques et les grammes appris des bols, sans nom. Les fichiers, feuilles et sauvegardes enregistrés avant ne sont pas atteints : supprimez-les vous-même. C’est sans retour.",
    do: "Effacer pour de bon",
    openFile: "Ouvrir le fichier d’un client…",
    file: "Fichier d’un client",
    log: {
      title: "Cartes enregistrées et effacées",
      none: "Aucune encore.",
      line: ({ what, on, plans }) =>
        `${t.date(on)} : une carte ${what === "exported" ? "enregistrée" : "effacée"}, ${t.count(plans, { one: "# plan", other: "# plans" })}`,
    },
  },
  retention: {
    title: "Durée de conservation des cartes",
    years: "Me demander pour une absence de",
    never: "Ne jamais demander",
    choice: (years) => t.count(years, { one: "# an", other: "# ans" }),
    how: "Rien ne s’efface tout seul.",
    due: (count, years) =>
      `${t.count(count, { one: "# carte", other: "# cartes" })} sans visite depuis ${t.count(years, { one: "# an", other: "# ans" })} ou plus`,
    line: (since) => `dernier plan ou changement : ${t.date(since)}`,
    stay: "Garder",
    stayNamed: (name) => `Garder ${name}`,
  },
  page: {
    about: (day) => `Tout ce qui est conservé de cette carte, au ${t.date(day)}`,
    card: "Carte",
    noneSaid: "pas demandé",
    visit: (day, plan) => `${t.date(day)} : ${plan}`,
    earlier: (day) => `Fait le ${t.date(day)}`,
    done: "Fait",
    planned: "Prévu",
    foil: ({ number, coats, minutesOn, level }) =>
      [
        `Papillote ${t.whole(number)}`,
        ...(coats.length === 0 ? [] : [`mélange ${coatLetters(coats)}`]),
        ...(minutesOn === null ? [] : [t.minutes(Math.round(minutesOn))]),
        ...(level === null ? [] : [`hauteur ${t.number(level)}`]),
      ].join(", "),
    unread: "Un plan qui ne peut pas être lu",
    unreadHow: "Il est dans le fichier tel qu’il a été écrit.",
    rest: "Le dessin et tous les chiffres sont dans le fichier.",
  },
  here: {
    title: "Carte",
    none: "Ce plan n’est sur aucune carte.",
    choose: "Choisir une carte…",
    show: "Voir la carte",
  },
  last: {
    title: (day) => `Dernière visite, ${t.date(day)}`,
    reactions: "Ce qui s’est mal passé",
    alarm: (what) => what,
    burning: (foil, piece) => `${t.capital(pieces(t).names([foil], piece))} : le cuir chevelu brûlait`,
    "stretch-stop": (foil, piece) =>
      `${t.capital(pieces(t).names([foil], piece))} : le cheveu s’étirait trop`,
    limp: (foil, piece) => `${t.capital(pieces(t).names([foil], piece))} : le cheveu était mou`,
    formula: "Formule",
    bowl: ({ mix, product, volume, lightenerG, developerG }) =>
      `Mélange ${mix} : ${product} ${t.grams(lightenerG)} + ${t.number(volume)} vol ${t.grams(developerG)}`,
    toner: ({ product, minutes }) =>
      minutes === null ? product : `${product}, ${t.minutes(Math.round(minutes))}`,
    foils: "Papillotes",
    foil: "Papillote",
    mix: "Mélange",
    minutesOn: "Minutes de pose",
    level: "Hauteur vue",
    unknown: "inconnu",
    note: "Notes",
  },
  regrowth: {
    title: "Repousse",
    grown: ({ growth, weeks }) =>
      `${t.spread(t.whole(growth.lowMm), t.mm(growth.highMm))} en ${t.count(Math.round(weeks), { one: "# semaine", other: "# semaines" })}, estimation`,
    measured: "Repousse mesurée",
    unit: "mm",
    why: "Mesurez si possible : le cheveu peut pousser moins vite que prévu. Aucun produit n’est proposé sur des cheveux éclaircis.",
    counts: (counts) =>
      `${t.whole(counts.due)} à refaire, ${t.whole(counts.soft)} fondues, ${t.whole(counts["too-early"])} trop tôt`,
    states: { due: "à refaire", soft: "fondue, laisser", "too-early": "trop tôt" },
    begins: ({ lowMm, highMm }) =>
      `éclairci à partir de ${t.spread(t.whole(lowMm), t.mm(highMm))} du cuir chevelu`,
    foil: (foil, piece) => t.capital(pieces(t).names([foil], piece)),
    actions: {
      root: "La racine seule",
      behind: "Un demi-pas derrière",
      before: "Un demi-pas devant",
      keep: "Comme avant",
      skip: "Laisser",
    },
    /** What the picture of a strand shows. */
    key: "Trait rouge : pas de produit au-delà. Hachuré : éclairci avant. Large : produit de ce plan.",
    picture: ({ coat, begins }) =>
      `Une mèche : ${coat ? `produit de ${t.whole(coat.fromMm)} à ${t.mm(coat.toMm)}` : "pas de produit"} ; éclaircie à partir de ${t.spread(t.whole(begins.lowMm), t.mm(begins.highMm))} du cuir chevelu.`,
    propose: "La racine seule où il faut, laisser le reste",
    twice: ({ foil, piece, on, fromMm, toMm }) =>
      `La ${pieces(t).names([foil], piece)} couvrirait des cheveux éclaircis le ${t.date(on)}, de ${t.whole(fromMm)} à ${t.mm(toMm)} du cuir chevelu.`,
  },
})
