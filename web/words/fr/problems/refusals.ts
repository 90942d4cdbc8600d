import type { RefusalCode } from "../../../core/document/refusal"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { Problem } from "../../../core/fields/problem"
import { type Sentences, say } from "../../say"
import type { Tools } from "../../tools"
import { articles } from "../common/articles"
import { common } from "../common/common"
import { pieces } from "../common/pieces"
import { working } from "../placement/working"
import { hairlineFaults } from "./faults"

/** Why a change cannot be, each a whole sentence. */
export function refusals(t: Tools, problem: (problem: Problem) => string): Sentences<RefusalCode> {
  const names = common(t)
  const { directions, sides } = names
  const { the } = articles(t, names)
  const { starts } = working(t, names)
  const all = (sections: readonly SectionNameCode[]) => t.and(sections.map(the))
  const sentences: Sentences<RefusalCode> = {
    "too-short": "Trop court pour séparer : tracez une ligne plus longue.",
    "outside-hairline": "Aucun cheveu ne pousse là : tracez à l’intérieur de la lisière.",
    "crosses-itself": "Une séparation ne peut pas se croiser : tracez-la de nouveau.",

    problem: ({ problem: found }) => t.capital(`${problem(found)}.`),
    "section-problem": ({ section, problem: found }) => t.capital(`${the(section)} : ${problem(found)}.`),
    "divider-problem": ({ divider, problem: found }) =>
      `Ligne de section ${t.whole(divider)} : ${problem(found)}.`,
    "too-many-sections": ({ most }) => `Un plan contient au plus ${t.whole(most)} sections.`,
    hairline: ({ fault }) => t.capital(`${hairlineFaults[fault]}.`),
    "break-the-pair": ({ section, because }) =>
      `${say(sentences, because)} Défaites la paire pour modifier ${the(section)} seule.`,

    "no-place-behind": ({ behindMm }) =>
      `Derrière la lisière : aucun point à ${t.mm(behindMm, 1)} derrière elle ne se trouve derrière celui-ci.`,
    "never-so-long": ({ wantedMm }) =>
      `Longueur : une séparation ne peut pas faire ${t.mm(wantedMm, 1)} à cet endroit.`,
    "only-so-long": ({ madeMm, wantedMm }) =>
      `Longueur : seuls ${t.number(madeMm)} des ${t.mm(wantedMm, 1)} sont à l’intérieur de la lisière. Déplacez-la d’abord, ou demandez moins.`,
    "off-hairline": "Elle ne peut pas suivre la lisière à cet endroit. Déplacez-la d’abord.",
    "no-direction": ({ direction }) =>
      `Aucune séparation ${directions[direction]} à cet endroit. Déplacez-la d’abord.`,
    "no-angle": ({ degrees }) =>
      `Angle : aucune séparation à ${t.whole(degrees)}° à cet endroit. Déplacez-la d’abord.`,
    "angle-leaves-hair": ({ degrees }) =>
      `Angle : à ${t.whole(degrees)}°, la séparation sortirait des cheveux. Raccourcissez-la ou déplacez-la d’abord.`,
    "no-start-along": ({ side, wantedMm }) =>
      `Du milieu du front, à ${sides[side]} : la séparation ne peut pas commencer à ${t.mm(wantedMm, 1)} le long de la lisière. Rapprochez-la d’abord de la lisière, ou glissez-la là.`,
    "divider-runs-along": ({ section }) =>
      t.capital(
        `${the(section)} : la ligne de section la longe, aucune coupe ne sépare donc les deux. Déplacez-la, affinez-la ou laissez-la.`,
      ),

    "thinning-does-not-part": "L’affiner ne sépare pas les deux. Déplacez l’une d’elles.",
    "one-foil-does": "Une papillote est assez large pour cette section.",
    "nowhere-to-paste":
      "Il n’y a pas de cheveux libres derrière. Déplacez ce qui s’y trouve, ou collez dans un autre plan.",
    "paired-already": ({ section }) =>
      t.capital(`${the(section)} fait déjà partie d’une paire. Défaites la paire pour refaire un miroir.`),

    "no-room-behind": "Il n’y a pas de place pour une autre derrière celle-ci.",
    "no-room-on-other-side":
      "Il n’y a pas de place pour une autre de l’autre côté. Défaites la paire pour continuer avec une seule.",
    "no-room-for-stack": ({ section }) =>
      `Il n’y a pas de place derrière ${the(section)}. Avancez-la, ou suivez la lisière.`,
    "stack-ends": ({ section, fits, asked }) =>
      t.count(fits, {
        one: `Seule # sur ${t.whole(asked)} tient derrière ${the(section)} : les cheveux s’arrêtent là.`,
        other: `Seules # sur ${t.whole(asked)} tiennent derrière ${the(section)} : les cheveux s’arrêtent là.`,
      }),
    "no-hair-for-veil": ({ section }) => `Pas de cheveux derrière ${the(section)} pour un voile. Avancez-la.`,
    "up-to-hairline": ({ sections }) =>
      t.capital(
        t.count(sections.length, {
          one: `${all(sections)} prend les cheveux jusqu’à la lisière. Affinez-la ou reculez-la d’abord.`,
          other: `${all(sections)} prennent les cheveux jusqu’à la lisière. Affinez-les ou reculez-les d’abord.`,
        }),
      ),
    "choose-two": "Choisissez deux papillotes pour laisser l’espace entre elles.",
    "nothing-between": ({ sections }) =>
      `Il n’y a pas de cheveux à laisser entre ${all(sections)}. Éloignez l’une de l’autre.`,
    "wide-between": ({ mostMm, sections }) =>
      `Plus de ${t.mm(mostMm)} séparent ${all(sections)}. Choisissez-en deux voisines.`,
    "no-room-for": ({ name }) => `Il n’y a pas de place pour « ${name} » à cet endroit.`,
    "no-room-for-technique": ({ name }) => `Cette tête n’a pas de place pour la technique « ${name} ».`,
    "no-room-for-start": ({ start }) => `Cette tête n’a pas de place pour « ${starts[start].name} ».`,
    "start-is-there": ({ start }) => `« ${starts[start].name} » est déjà sur la tête.`,

    "no-new-growth": ({ foil, piece }) =>
      `La ${pieces(t).names([foil], piece)} n’a pas de repousse à couvrir sans toucher des cheveux éclaircis.`,
    "mix-in-use": ({ mix, foils, piece }) =>
      t.count(foils.length, {
        one: `Le mélange ${mix} sert pour la ${pieces(t).names(foils, piece)}. Donnez-lui d’abord un autre mélange.`,
        other: `Le mélange ${mix} sert pour les ${pieces(t).names(foils, piece)}. Donnez-leur d’abord un autre mélange.`,
      }),
    "foil-without-mix": ({ foil, piece }) =>
      `La ${pieces(t).names([foil], piece)} n’est dans aucun des mélanges.`,
  }
  return sentences
}
