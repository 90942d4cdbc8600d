import type { RefusalCode } from "../../../core/document/refusal"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { Problem } from "../../../core/fields/problem"
import { type Sentences, say } from "../../say"
import type { Tools } from "../../tools"
import { common, ofSection, theSection } from "../common/common"
import { pieces } from "../common/pieces"
import { working } from "../placement/working"
import { hairlineFaults } from "./faults"

/** Why a change cannot be, each a whole sentence. */
export function refusals(t: Tools, problem: (problem: Problem) => string): Sentences<RefusalCode> {
  const names = common(t)
  const { directions, sides } = names
  const { starts } = working(t, names)
  const all = (sections: readonly SectionNameCode[]) => t.and(sections.map(theSection))
  const sentences: Sentences<RefusalCode> = {
    "too-short": "Demasiado corta para una raya: dibuje una línea más larga.",
    "outside-hairline": "Ahí no crece cabello: dibuje dentro del contorno.",
    "crosses-itself": "Una raya no puede cruzarse a sí misma: dibújela otra vez.",

    problem: ({ problem: found }) => t.capital(`${problem(found)}.`),
    "section-problem": ({ section, problem: found }) =>
      t.capital(`${theSection(section)}: ${problem(found)}.`),
    "divider-problem": ({ divider, problem: found }) =>
      `Línea de división ${t.whole(divider)}: ${problem(found)}.`,
    "too-many-sections": ({ most }) => `Un plan tiene como mucho ${t.whole(most)} secciones.`,
    hairline: ({ fault }) => t.capital(`${hairlineFaults[fault]}.`),
    "break-the-pair": ({ section, because }) =>
      `${say(sentences, because)} Separe la pareja para cambiar solo ${theSection(section)}.`,

    "no-place-behind": ({ behindMm }) =>
      `Detrás del contorno: ningún lugar a ${t.mm(behindMm, 1)} queda detrás de este.`,
    "never-so-long": ({ wantedMm }) => `Largo: ahí una raya no puede medir ${t.mm(wantedMm, 1)}.`,
    "only-so-long": ({ madeMm, wantedMm }) =>
      `Largo: solo ${t.number(madeMm)} de ${t.mm(wantedMm, 1)} quedan dentro del contorno. Muévala antes o pida menos.`,
    "off-hairline": "Ahí no puede seguir el contorno. Muévala antes.",
    "no-direction": ({ direction }) => `Ahí no hay raya ${directions[direction]}. Muévala antes.`,
    "no-angle": ({ degrees }) => `Ángulo: ahí no hay raya a ${t.whole(degrees)}°. Muévala antes.`,
    "angle-leaves-hair": ({ degrees }) =>
      `Ángulo: a ${t.whole(degrees)}° la raya saldría del cabello. Acórtela o muévala antes.`,
    "no-start-along": ({ side, wantedMm }) =>
      `Del centro frontal, ${sides[side]}: la raya no puede empezar a ${t.mm(wantedMm, 1)} por el contorno. Acérquela antes al contorno o arrástrela hasta ahí.`,
    "divider-runs-along": ({ section }) =>
      t.capital(
        `${theSection(section)}: la línea de división va a lo largo, así que ningún corte separa las dos partes. Muévalo, hágalo más fino o déjelo.`,
      ),

    "thinning-does-not-part": "Hacerlo más fino no los separa. Mueva uno de los dos.",
    "one-foil-does": "Un papel basta para el ancho de esta sección.",
    "nowhere-to-paste": "No queda cabello libre detrás. Mueva lo que hay o pegue en otro plan.",
    "paired-already": ({ section }) =>
      t.capital(`${theSection(section)} ya es de una pareja. Separe la pareja para reflejarlo otra vez.`),

    "no-room-behind": "No hay sitio para otro detrás de este.",
    "no-room-on-other-side": "No hay sitio para otro en el otro lado. Separe la pareja para seguir con uno.",
    "no-room-for-stack": ({ section }) =>
      `No hay sitio detrás ${ofSection(section)}. Muévalo hacia delante o siga el contorno.`,
    "stack-ends": ({ section, fits, asked }) =>
      t.count(fits, {
        one: `Solo cabe # de ${t.whole(asked)} detrás ${ofSection(section)}: ahí acaba el cabello.`,
        other: `Solo caben # de ${t.whole(asked)} detrás ${ofSection(section)}: ahí acaba el cabello.`,
      }),
    "no-hair-for-veil": ({ section }) =>
      `No hay cabello detrás ${ofSection(section)} para una capa superior. Muévalo hacia delante.`,
    "up-to-hairline": ({ sections }) =>
      t.capital(
        t.count(sections.length, {
          one: `${all(sections)} toma el cabello hasta el contorno. Hágalo más fino o muévalo antes hacia atrás.`,
          other: `${all(sections)} toman el cabello hasta el contorno. Hágalos más finos o muévalos antes hacia atrás.`,
        }),
      ),
    "choose-two": "Elija dos papeles para dejar fuera el cabello entre ellos.",
    "nothing-between": ({ sections }) =>
      `No hay cabello entre ${all(sections)} que dejar fuera. Aleje uno del otro.`,
    "wide-between": ({ mostMm, sections }) =>
      `Hay más de ${t.mm(mostMm)} entre ${all(sections)}. Elija dos que estén uno junto al otro.`,
    "no-room-for": ({ name }) => `Ahí no hay sitio para «${name}».`,
    "no-room-for-technique": ({ name }) => `En esta cabeza no hay sitio para la técnica «${name}».`,
    "no-room-for-start": ({ start }) => `En esta cabeza no hay sitio para «${starts[start].name}».`,
    "start-is-there": ({ start }) => `«${starts[start].name}» ya está en la cabeza.`,

    "no-new-growth": ({ foil, piece }) =>
      `El ${pieces(t).names([foil], piece)} no tiene crecimiento que se pueda cubrir sin tocar cabello aclarado.`,
    "mix-in-use": ({ mix, foils, piece }) =>
      t.count(foils.length, {
        one: `La mezcla ${mix} la usa el ${pieces(t).names(foils, piece)}. Dele antes otra mezcla.`,
        other: `La mezcla ${mix} la usan los ${pieces(t).names(foils, piece)}. Deles antes otra mezcla.`,
      }),
    "foil-without-mix": ({ foil, piece }) =>
      `El ${pieces(t).names([foil], piece)} no está en ninguna de las mezclas.`,
  }
  return sentences
}
