import type { KeptThing, NotKept } from "../../../core/fields/notKept"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"
import { problems } from "../problems/problems"

/** Why a thing could not be kept in the browser, and what to do. */
export const notKept = (t: Tools): Sentences<NotKept> => ({
  "changed-elsewhere":
    "Ce plan a été modifié dans un autre onglet ou une autre fenêtre. Rien n’a été écrasé : enregistrez le vôtre comme copie, ou rouvrez l’autre.",
  "removed-elsewhere":
    "Ce plan a été supprimé dans un autre onglet ou une autre fenêtre. Enregistrez le vôtre comme copie si vous en avez encore besoin.",
  "card-changed-elsewhere":
    "Cette carte a été modifiée dans un autre onglet ou une autre fenêtre. Rien n’a été écrasé : elle s’affiche telle qu’elle est maintenant. Saisissez votre changement à nouveau.",
  "merged-too-long":
    "Réunies, les deux cartes dépassent la longueur d’une carte. Raccourcissez d’abord une note.",
  "service-running":
    "Une prestation est en cours au fauteuil de ce plan. Terminez-la avant de supprimer le plan.",
  blocked: ({ what }) =>
    `Une autre fenêtre est ouverte avec un Partline plus ancien. Fermez-la, ou enregistrez ${things[what]} dans un fichier.`,
  full: ({ what }) =>
    `L’espace du navigateur est plein. Enregistrez ${things[what]} dans un fichier, puis supprimez les plans devenus inutiles.`,
  "newer-shelf": ({ what }) =>
    `Un Partline plus récent a utilisé l’espace de ce navigateur. Enregistrez ${things[what]} dans un fichier et rechargez la page.`,
  "private-window": ({ what }) =>
    `Une fenêtre privée n’enregistre rien. Enregistrez ${things[what]} dans un fichier avant de la fermer.`,
  "refused-by-browser": ({ what, error }) =>
    error
      ? `Le navigateur n’a pas pu enregistrer ${things[what]} (${error}). Enregistrez dans un fichier et rechargez la page.`
      : `Le navigateur n’a pas pu enregistrer ${things[what]}. Enregistrez dans un fichier et rechargez la page.`,
  "not-in-order": ({ what, problem }) =>
    `Impossible d’enregistrer ${things[what]} : la relecture échouerait. ${problems(t).sentence(problem)}`,
  unreadable: ({ problem }) => problems(t).sentence(problem),
  "salon-unreadable":
    "Une partie des données enregistrées du salon est illisible. Au prochain changement, elle est mise de côté ; le reste demeure.",
  "keeper-missing":
    "La partie de Partline qui enregistre n’a pas pu être chargée. Enregistrez le plan dans un fichier, puis rechargez la page.",
})

const things: Record<KeptThing, string> = {
  plan: "le plan",
  technique: "la technique",
  salon: "les données du salon",
  service: "la prestation",
  card: "la carte",
}
