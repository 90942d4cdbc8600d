import type { Tools } from "../tools"

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
  backup: {
    today: "La dernière sauvegarde date d’aujourd’hui.",
    days: ({ days }: { days: number }) =>
      t.count(days, {
        one: "La dernière sauvegarde date de # jour.",
        other: "La dernière sauvegarde date de # jours.",
      }),
  },
  licences: "Licences",
})
