import type { Tools } from "../tools"

/** How many plans and techniques of a backup there are, by what becomes of them here. */
type BackupFound = {
  added: number
  beside: number
  same: number
  unread: number
  techniques: number
  cards: number
}

/** The app on this device, the plans kept in it, and newer versions. */
export const offline = (t: Tools) => ({
  done: {},
  update: {
    ready: "Un Partline plus récent est prêt.",
    load: "Le charger",
    later: "Plus tard",
    refused:
      "Pas maintenant : une autre fenêtre est au fauteuil, ou un changement n’est pas encore enregistré.",
  },
  kept: {
    title: "Sur cet appareil",
    unknown:
      "Ce navigateur garde les plans, mais pas Partline lui-même : il ne s’ouvre que si son adresse est joignable.",
    keeping: "Partline est en cours de copie sur cet appareil, pour s’ouvrir sans réseau.",
    kept: "Partline s’ouvre sans réseau.",
    failed:
      "Partline n’a pas pu être copié sur cet appareil : il ne s’ouvre que si son adresse est joignable.",
  },
  persistence: {
    unknown: "Ce navigateur ne dit pas s’il épargne les plans quand la place manque.",
    granted: "Ce navigateur épargne les plans quand la place manque.",
    refused:
      "Ce navigateur peut supprimer les plans quand la place manque, ou s’il n’a pas servi depuis un moment.",
    ask: "Demander de les épargner",
  },
  /** All that this browser keeps, in one file. */
  backup: {
    title: "Sauvegarde",
    none: "Aucune sauvegarde n’a été faite depuis ce navigateur.",
    save: "Faire une sauvegarde",
    open: "Ouvrir une sauvegarde…",
    file: "Fichier de sauvegarde",
    holds:
      "Un seul fichier avec tous les plans, les cartes, les techniques et ce que garde votre salon. Il contient toutes les réponses de santé de votre clientèle et n’est pas verrouillé : gardez-le là où vous seul pouvez le lire. Une prestation en cours au fauteuil n’y est pas.",
    /** What is in a backup that was opened, before it is taken in. */
    found: ({ added, beside, same, unread, techniques, cards }: BackupFound) =>
      [
        `${t.count(added, { one: "# plan est nouveau ici", other: "# plans sont nouveaux ici" })}.`,
        ...(same > 0
          ? [`${t.count(same, { one: "# plan est déjà ici", other: "# plans sont déjà ici" })}.`]
          : []),
        ...(beside > 0
          ? [
              `${t.count(beside, { one: "# plan diffère de celui d’ici et vient à côté", other: "# plans diffèrent de ceux d’ici et viennent à côté" })}.`,
            ]
          : []),
        ...(unread > 0
          ? [
              `${t.count(unread, { one: "# plan est illisible et mis de côté", other: "# plans sont illisibles et mis de côté" })}.`,
            ]
          : []),
        `${t.count(techniques, { one: "# technique est nouvelle", other: "# techniques sont nouvelles" })}.`,
        ...(cards > 0
          ? [`${t.count(cards, { one: "# carte est nouvelle", other: "# cartes sont nouvelles" })}.`]
          : []),
        "Rien de ce qui est ici n’est remplacé.",
      ].join(" "),
    takeIn: "Reprendre ici",
    restored: "La sauvegarde est reprise.",
    today: "La dernière sauvegarde date d’aujourd’hui.",
    days: ({ days }: { days: number }) =>
      t.count(days, {
        one: "La dernière sauvegarde date de # jour.",
        other: "La dernière sauvegarde date de # jours.",
      }),
  },
  licences: "Licences",
})
