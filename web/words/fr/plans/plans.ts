import type { Tools } from "../../tools"
import { keys } from "./keys"
import { notKept } from "./notKept"

/** The top bar, the plans of this browser, saving, keys and the language. */
export const plans = (t: Tools) => ({
  /** What undo calls a change of this chapter. */
  done: {
    rename: "Renommer le plan",
    "follow-scale": "Suivre ce que la balance a appris",
  },
  notKept: notKept(t),
  keys,
  pageTitle: "Partline",
  untitled: "Plan sans nom",
  /** The bar over every screen. */
  bar: {
    plans: "Plans…",
    skip: "Aller à l’écran",
    named: (name: string) => `${name} : Plans…`,
    visit: "La prestation",
    screens: {
      client: "Profil",
      placement: "Placement",
      formula: "Formule",
      timing: "Minutage",
      sheets: "Fiches",
    },
    /** In the window's title. */
    pageTitle: (screen: string, plan: string) => `${screen} : ${plan} – Partline`,
    example: "Un exemple inventé.",
    startOwn: "Créer votre plan",
    undo: "Défaire",
    redo: "Refaire",
    undoWhat: (what: string) => `Défaire : ${what}`,
    redoWhat: (what: string) => `Refaire : ${what}`,
  },
  undone: (what: string) => `Défait : ${what}`,
  doneAgain: (what: string) => `Refait : ${what}`,
  lastNotOpened: (why: string) => `Le dernier plan n’a pas pu être ouvert. ${why}`,
  /** Whether the plan on the screen is on the disk. */
  saving: {
    "not-yet": "Pas enregistré",
    saving: "Enregistrement…",
    saved: "Enregistré",
    notSaved: "Non enregistré.",
    asCopy: "Enregistrer une copie",
    toFile: "Vers un fichier",
  },
  /** The dialog of all plans. */
  dialog: {
    title: "Plans",
    newPlan: "Nouveau plan",
    fromExample: "Partir de l’exemple",
    saveEverything: "Tout enregistrer (fichier)",
    saveForColleague: "Version à transmettre",
    fileHolds:
      "« Tout enregistrer (fichier) » contient les réponses de santé, les touches d’essai et les dérogations, lisibles par quiconque a le fichier. « Version à transmettre » les laisse de côté.",
    stay: "Les plans restent dans ce navigateur et n’en sortent que sous forme de fichiers. Enregistrez-en un dans un fichier pour l’emporter ou en avoir une seconde copie.",
  },
  list: {
    title: "Enregistrés ici",
    none: "Aucun pour l’instant. Un plan s’enregistre dès que quelque chose est tracé.",
    numbered: (title: string, number: number) => `${title} (${t.whole(number)})`,
    openNow: "ouvert",
    moment: (iso: string) => t.dayAndTime(Date.parse(iso)),
    details: (items: readonly string[]) => items.join(", "),
    rename: "Renommer",
    renameNamed: (name: string) => `Renommer ${name}`,
    newName: "Nouveau nom",
    save: "Enregistrer",
    duplicate: "Dupliquer",
    duplicateNamed: (name: string) => `Dupliquer ${name}`,
    copyOf: (name: string) => (name.trim() ? `${name} (copie)` : "Copie"),
    delete: "Supprimer",
    deleteNamed: (name: string) => `Supprimer ${name}`,
    deleted: (name: string) => `« ${name} » est supprimé. Ce plan reste 30 jours dans la corbeille.`,
    undo: "Défaire",
    /** No more are shown at once. */
    more: (count: number) => t.count(count, { one: "Montrer # autre", other: "Montrer # autres" }),
    find: "Chercher un plan",
  },
  bin: {
    title: (count: number) => t.count(count, { one: "Corbeille : # plan", other: "Corbeille : # plans" }),
    days: (count: number) =>
      t.count(count, {
        one: "supprimé définitivement dans # jour",
        other: "supprimé définitivement dans # jours",
      }),
    putBack: "Restaurer",
    putBackNamed: (name: string) => `Restaurer ${name}`,
  },
  /** Plans that could not be read. */
  aside: {
    title: (count: number) => t.count(count, { one: "# plan illisible", other: "# plans illisibles" }),
    why: "Ils sont gardés tels qu’ils ont été écrits. Un Partline plus récent pourra peut-être les lire ; chacun peut être enregistré dans un fichier.",
    tryAgain: "Réessayer",
    save: "Vers un fichier",
    saveNamed: (name: string) => `Enregistrer ${name} dans un fichier`,
  },
  /** The shelf cannot be written in; its plans can be taken out. */
  readOnly: {
    title: "Ces plans peuvent être enregistrés dans des fichiers, mais pas ouverts ici",
    save: "Vers un fichier",
    saveNamed: (name: string) => `Enregistrer ${name} dans un fichier`,
  },
  language: {
    title: "Langue",
    unchecked: "traduit sans coloriste de langue maternelle ; corrections bienvenues",
  },
  /** A part of the app that did not load, or broke. */
  parts: {
    waiting: "Chargement…",
    failed: "Cette partie n’a pas pu être chargée.",
    stays: "Le plan reste tel quel.",
    tryAgain: "Réessayer",
    reload: "Recharger la page",
  },
})
