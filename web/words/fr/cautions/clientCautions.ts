import type { AlertTestFault } from "../../../core/cautions/rules/alertTest"
import type { ClientCode } from "../../../core/cautions/rules/cautionCode"
import { type Sentences, say } from "../../say"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"

/** What was found of the client, the hair and the tests. */
export const clientCautions = (t: Tools) =>
  ({
    "under-age": ({ youngestYears }) =>
      `La personne a moins de ${youngestYears} ans : ni coloration ni touche d’essai (étiquette des colorants d’oxydation ; consignes de la profession pour le décolorant).`,
    "past-reaction": ({ product }) =>
      product === null
        ? "La personne a déjà réagi (à une coloration ou au henné noir). Ne pas colorer. Un médecin peut rechercher la cause."
        : `La touche d’essai (${product}) a réagi. Ne pas colorer. Un médecin peut rechercher la cause.`,
    "breathing-reaction":
      "Le décolorant a provoqué chez la personne respiration sifflante, toux ou urticaire. Ne pas le mélanger près d’elle ; l’orienter vers un médecin.",
    "mixer-breathing":
      "Le décolorant provoque toux, respiration sifflante ou éruption chez qui mélange. Quelqu’un d’autre mélange, dans une autre pièce ; orienter vers un médecin.",
    "dye-allergy":
      "Allergie à la coloration capillaire, à ses ingrédients ou au décolorant. Ne pas colorer et ne pas faire de touche d’essai.",
    "scalp-hurt": ({ scalp }) =>
      scalp === "broken"
        ? "Le cuir chevelu est lésé. Aucune prestation avant cicatrisation."
        : "Le cuir chevelu est irrité. Aucune prestation avant guérison.",
    "scalp-today":
      "Coup de soleil, coupures, piqûres, poux ou infection du cuir chevelu. Aucune prestation avant disparition.",
    "sensitive-scalp":
      "Le cuir chevelu est sensible. L’étiquette dit de ne pas colorer : attendre, ou demander à un médecin.",
    "face-rash":
      "Il y a une éruption sur le visage. L’étiquette dit de ne pas colorer : attendre, ou demander à un médecin.",
    "alert-test-wanting": ({ fault }) => say(alertTestFaults(t), fault),
    "toner-not-chosen": ({ wanting, testHours }) =>
      wanting.length === 2
        ? `Ni patine ni nuance racine choisies. Mélangées à l’oxydant, chacune demande sa propre touche d’essai, lue négative au moins ${testHours} heures après.`
        : wanting[0] === "toner"
          ? `Aucune patine choisie. Mélangée à l’oxydant, elle demande sa propre touche d’essai, lue négative au moins ${testHours} heures après.`
          : `Aucune nuance racine choisie. Mélangée à l’oxydant, elle demande sa propre touche d’essai, lue négative au moins ${testHours} heures après.`,
    expecting:
      "Grossesse ou allaitement : voir d’abord avec le médecin ou la sage-femme de la personne, ou refuser.",
    "scalp-condition":
      "Affection du cuir chevelu ou opération récente : voir d’abord avec le médecin de la personne, ou refuser.",
    chemotherapy:
      "Chimiothérapie ou radiothérapie, en cours ou récente : voir d’abord avec le médecin de la personne, ou refuser.",
    asthma:
      "Asthme : une touche d’essai négative ne dit rien du décolorant. Demander d’abord au médecin de la personne. Ensuite aérer, éviter la poussière, garder l’inhalateur à portée de main et arrêter à la première toux.",
    medicines:
      "Médicament ou maladie qui touche les cheveux, la peau, la cicatrisation ou provoque des évanouissements : voir d’abord avec le pharmacien ou le médecin de la personne, ou refuser.",
    "other-allergy":
      "La personne a une allergie. La comparer aux ingrédients de chaque produit et gant. Si elle y figure, ou si la cause est inconnue, refuser.",
    "card-dye-allergy": ({ to }) =>
      `Sur la carte : ${allergyTo(t, to)}, traitée comme une allergie à la coloration. À confirmer aujourd’hui. Un non ne la lève pas : si la carte est fausse, corrigez la carte.`,
    "card-allergy": ({ to }) =>
      `Sur la carte : ${allergyTo(t, to)}. À confirmer aujourd’hui ; vérifiez chaque produit et chaque gant. Un non ne la lève pas : si la carte est fausse, corrigez la carte.`,
    "black-henna":
      "La personne a eu un tatouage au henné noir : il peut rendre allergique à la coloration. Seule compte une touche d’essai faite après le tatouage.",
    "hairline-loss":
      "Perte de cheveux le long de la lisière. Y laisser une bande sans produit ; éviter la tension.",
    eyes: "Retirer les lentilles de contact avant de mélanger. Tenir le produit bien à l’écart des sourcils et des cils.",
    "metallic-salts":
      "Sels métalliques ou henné composé sur les cheveux : avec le peroxyde, les cheveux peuvent chauffer, fumer et casser. Ne pas décolorer. Couper la partie touchée, ou attendre qu’elle soit partie avec la repousse.",
    henna:
      "Henné sur les cheveux, composition inconnue. Tester d’abord des cheveux coupés dans le mélange : en cas de chaleur, de bulles ou de changement de couleur, ne pas continuer.",
    "strand-test-failed": ({ product }) =>
      `Le test mèche (${product}) a échoué : les cheveux ont cassé ou perdu leur résistance. Ne pas les décolorer.`,
    "over-stretched":
      "Mouillés, les cheveux restent étirés ou cassent. Ne pas décolorer. Couper, traiter et tester de nouveau un autre jour.",
    "recent-relaxer":
      "Défrisage ou permanente récents. Refuser, ou attendre et décider d’après un test mèche.",
    "unknown-content":
      "Coloration faite à la maison, ou cuivre d’eau de puits ou de piscine : composition inconnue. Tester d’abord des cheveux coupés dans le mélange : en cas de chaleur, de bulles ou de changement de couleur, ne pas continuer.",
    extensions:
      "Extensions ou cheveux collés en place. Tenir le décolorant à l’écart des points de colle, bandes et anneaux métalliques.",
    "strand-test-first":
      "Cheveux traités chimiquement et aucun test mèche noté. Tester d’abord une mèche avec ce mélange.",
    overlap:
      "Une partie des cheveux est déjà éclaircie. Ne pas chevaucher sauf si le mode d’emploi le permet ; protéger les pointes ; contrôler à 5 minutes.",
    "coated-twice": ({ foils, piece, fromMm, toMm }) =>
      `${t.count(foils.length, { one: "La", other: "Les" })} ${pieces(t).names(foils, piece)} ${t.count(foils.length, { one: "couvrirait", other: "couvriraient" })} des cheveux déjà éclaircis, de ${t.whole(fromMm)} à ${t.mm(toMm)} du cuir chevelu. Ne couvrir que la repousse, ou passer.`,
    porous:
      "Les cheveux poreux s’éclaircissent et se patinent vite. Premier contrôle à 5 minutes ; patiner en dernier.",
  }) satisfies Sentences<ClientCode>

/** Why a patch test does not count today. */
export const alertTestFaults = (t: Tools) => {
  const test = (product: string) => `Touche d’essai (${product})`
  return {
    "no-test": ({ product, hours }) =>
      `Aucune touche d’essai notée pour ${product}. En faire une et la lire après ${hours} heures.`,
    "no-time": ({ product }) => `${test(product)} : date et heure d’application manquent.`,
    "in-future": ({ product }) => `${test(product)} : la date d’application est dans le futur.`,
    "too-young": ({ product, hoursOn, hours, readFrom }) =>
      `${test(product)} : ${hoursOn} heures sur ${hours}. À lire à partir du ${t.weekday(readFrom)}, ${readFrom.slice(11)}.`,
    unread: ({ product }) => `${test(product)} : pas encore lue. Regarder la peau et noter ce qui se voit.`,
    reacted: ({ product }) => `${test(product)} : la peau a réagi. Ne pas colorer.`,
    "reader-missing": ({ product }) => `${test(product)} : saisir quand et par qui elle a été lue.`,
    "read-in-future": ({ product }) => `${test(product)} : la date de lecture est dans le futur.`,
    "read-early": ({ product, hours }) =>
      `${test(product)} : lue avant la fin des ${hours} heures. Regarder la peau de nouveau.`,
    "out-of-date": ({ product, lastDay }) =>
      `${test(product)} : valable jusqu’au ${t.date(lastDay)}. En faire une nouvelle.`,
    "other-visit": ({ product, madeFor }) =>
      madeFor === null
        ? `${test(product)} : faite pour une autre séance. En faire une nouvelle, ou saisir combien de temps son fabricant la dit valable.`
        : `${test(product)} : faite pour la séance du ${t.date(madeFor)}. En faire une nouvelle, ou saisir combien de temps son fabricant la dit valable.`,
    "too-old": ({ product, appliedOn, mostDays }) =>
      `${test(product)} : faite le ${t.date(appliedOn)}, plus de ${mostDays} jours avant la séance. En faire une nouvelle, ou saisir combien de temps son fabricant la dit valable.`,
    "before-henna": ({ product, tattooOn }) =>
      `${test(product)} : faite avant le tatouage au henné noir du ${t.date(tattooOn)}. En faire une nouvelle.`,
    "henna-undated": ({ product }) =>
      `${test(product)} : saisir la date du tatouage au henné noir. Seule compte une touche faite après.`,
    "changed-since": ({ product }) =>
      `${test(product)} : quelque chose a changé depuis. En faire une nouvelle.`,
  } satisfies Sentences<AlertTestFault>
}

/** An allergy nobody wrote the cause of is named all the same. */
const allergyTo = (t: Tools, to: readonly string[]) =>
  `allergie (${t.and(to.map((what) => what.trim() || "cause inconnue"))})`
