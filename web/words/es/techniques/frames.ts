import type { HouseWords } from "../../en/techniques/houseWords"
import type { Tools } from "../../tools"
import type { stepWords } from "./stepWords"

/** Techniques that frame the face. */
export const frames = (t: Tools, { stitches, mm }: ReturnType<typeof stepWords>) =>
  ({
    "bright-frame": {
      name: "Marco luminoso",
      aim: "Un borde claro alrededor del rostro que se suaviza hacia atrás.",
      notes:
        "Para un marco que se ve con el cabello suelto y recogido. «Más claro en el borde» pone un velo en el mismo contorno; «más suave en el borde» lo teje y crece con menos marca. El cabello fino de la sien aclara primero: revise ahí antes. Deje fuera los pelitos de bebé.",
      steps: ({ isSoft, stitch, gapMm, firstMm, edgeDepthMm, depthMm, wovenMm, driftMm }) => [
        `Peine los pelitos de bebé hacia delante. Haga la raya desde junto al centro frontal hasta la entrada, a ${mm(firstMm)} detrás del contorno.`,
        isSoft
          ? `Teja ${stitches("fine")} en los ${mm(edgeDepthMm)} delante de la raya. Coloque el papel cerca de la raíz y cubra las dos caras.`
          : `Tome todo el cabello de los ${mm(edgeDepthMm)} delante de la raya: debe verse la luz a través. Coloque el papel cerca de la raíz y cubra las dos caras.`,
        "Deje un poco de cabello en la esquina de la entrada y haga lo mismo desde ahí hasta la sien. Dos papeles cortos quedan más planos que uno doblado en la esquina.",
        isSoft
          ? `Deje ${mm(gapMm)}. Haga la raya detrás de los dos papeles, ${mm(driftMm)} más lejos de la cara en la sien que delante, y tome un velo de ${mm(depthMm)}.`
          : `Deje ${mm(gapMm)}. Haga la raya detrás de los dos papeles, ${mm(driftMm)} más lejos de la cara en la sien que delante, y teja ${stitches(stitch)} en ${mm(wovenMm)}.`,
        `Deje ${mm(gapMm)} y haga otra raya, que caiga más hacia atrás. Teja ${stitches(stitch)} en ${mm(wovenMm)}: esta fila lleva la luz al cabello de detrás.`,
        "Lleve todos los papeles hacia atrás, lejos de la cara, y mantenga limpios los pliegues para que nada se filtre a la piel.",
        "Coloque el otro lado desde los mismos puntos. Revise primero los dos papeles de las sienes.",
      ],
    },
    "off-centre-frame": {
      name: "Marco con raya al lado",
      aim: "Un marco que cae desde una raya al lado y sigue sus dos largos.",
      notes:
        "Para quien lleva la raya a un lado. Mire dónde cae el cabello antes de dividirlo. El lado largo lleva más papeles que el corto, a propósito. No se toma nada a través de la raya, así que ningún papel se ve como una línea en ella.",
      steps: ({ isRight, stitch, gapMm, depthMm, wovenMm, firstMm }) => [
        isRight
          ? "Peine el cabello con la raya a la derecha de su cliente y vea hasta dónde cae en cada lado. Deje sin tocar unos milímetros a ambos lados de la raya."
          : "Peine el cabello con la raya a la izquierda de su cliente y vea hasta dónde cae en cada lado. Deje sin tocar unos milímetros a ambos lados de la raya.",
        `Empiece por el lado largo: de la raya a la entrada tome un velo de ${mm(depthMm)}, con la raya a ${mm(firstMm)} detrás del contorno.`,
        "Siga desde debajo de la entrada hasta la sien con un segundo velo del mismo grosor.",
        `Deje ${mm(gapMm)}. Detrás de cada uno de los dos teja ${stitches(stitch)} en ${mm(wovenMm)}; el de la sien se va hacia atrás.`,
        `En el lado corto tome un velo de la raya a la sien y deje ${mm(gapMm)}.`,
        `Detrás teja ${stitches(stitch)} en ${mm(wovenMm)}, yendo hacia atrás en dirección a la sien.`,
        "Peine el cabello sobre los papeles y mire de frente: la raya debe quedar libre a ambos lados.",
      ],
    },
    "unequal-sides": {
      name: "Lado fuerte y lado ligero",
      aim: "Más luz donde se lleva el cabello, un solo velo fino en el otro lado.",
      notes:
        "Para cabello que se echa a un lado, se lleva detrás de una oreja o está cortado más corto en un lado. La diferencia es intencionada: muestre a su cliente los dos lados en el espejo antes de empezar. El lado ligero tiene un papel y está listo pronto.",
      steps: ({ isLeft, stitch, count, gapMm, depthMm, wovenMm, firstMm }) => [
        isLeft
          ? "La izquierda de su cliente es el lado fuerte. Haga la raya como se lleva y sujete el otro lado con una pinza."
          : "La derecha de su cliente es el lado fuerte. Haga la raya como se lleva y sujete el otro lado con una pinza.",
        `Tome un velo de ${mm(depthMm)} desde junto al centro frontal hasta la sien, con la raya a ${mm(firstMm)} detrás del contorno.`,
        `Deje ${mm(gapMm)} y teja detrás ${stitches(stitch)} en ${mm(wovenMm)}, en paralelo al velo.`,
        t.count(count, {
          one: `Con eso hay # fila en el lado fuerte, a ${mm(gapMm)} de la anterior.`,
          other: `Siga hasta tener # filas en el lado fuerte, cada una a ${mm(gapMm)} de la anterior.`,
        }),
        `Ahora el lado ligero: un velo de ${mm(depthMm)} cerca de la entrada, y nada detrás.`,
        "Retire el lado ligero por su cuenta cuando esté listo; no espere al lado fuerte.",
      ],
    },
    "fan-frame": {
      name: "Marco en abanico",
      aim: "Filas sobre la frente y un abanico de rayas que se abre por cada lado.",
      notes:
        "Para más luz que un marco en el borde, dejando la parte trasera como está. El abanico empieza pegado detrás de la entrada y se abre hacia la patilla, así que la luz se reparte al caer el cabello. El difuminado cardado carda todos los papeles menos el primero y se funde más.",
      steps: ({ isMelted, stitch, count, gapMm, depthMm, wovenMm, foreheadMm, opensMm }) => [
        "Separe la parte delantera de oreja a oreja y sujete la trasera con una pinza; queda como está.",
        `Sobre la frente haga la raya a ${mm(foreheadMm)} detrás del contorno, de entrada a entrada sin pasarlas, y teja ${stitches(stitch)} en ${mm(wovenMm)}.`,
        t.count(count, {
          one: "Una fila basta. Deje como está el cabello de detrás.",
          other: `Siga hasta tener # filas ahí, con ${mm(gapMm)} entre ellas.`,
        }),
        `En un lado, desde detrás de la entrada hasta encima de la patilla, tome un velo de ${mm(depthMm)} a lo largo del contorno: la primera varilla del abanico.`,
        isMelted
          ? `Cada varilla de detrás empieza ${mm(gapMm)} más atrás y se abre ${mm(opensMm)} más en su extremo inferior. Teja ${stitches(stitch)}, carde cerca de la mitad de cada puntada hacia la raíz en dos a cuatro pasadas y empiece el producto a partir del colchón.`
          : `La siguiente varilla empieza ${mm(gapMm)} más atrás y se abre ${mm(opensMm)} en su extremo inferior: teja ${stitches(stitch)} en ${mm(wovenMm)}. La tercera se abre otro tanto y es un velo de ${mm(depthMm)}.`,
        "Lleve los papeles hacia atrás en abanico, lejos de la cara. Deje cabello entre la frente y la primera varilla: no deben juntarse tres papeles en la entrada.",
        "Haga el otro lado desde los mismos puntos, varilla a varilla.",
      ],
    },
    "temple-to-temple": {
      name: "Microvelos, de sien a sien",
      aim: "Velos muy finos en cada lado; se ve la luz a través.",
      notes:
        "Para una primera aclaración apenas visible. Mantenga los velos en 1–2 mm: más gruesos pueden verse como rayas de color. Los velos finos aclaran rápido, así que revise pronto.",
      steps: ({ count, depthMm, gapMm, firstMm }) => [
        `Haga la raya desde junto al centro frontal hasta la sien, a ${mm(firstMm)} detrás del contorno y en paralelo a él.`,
        `Con la punta de la cola tome ${mm(depthMm)} delante de la raya. Levántelo contra la luz: debe verse a través en todo el largo.`,
        "Coloque un papel cerca de la raíz, extienda el velo plano y cúbralo con poco producto por las dos caras.",
        t.count(count, {
          one: `Deje ${mm(gapMm)} de cabello sobre el papel y haga otra raya, en paralelo a la primera, hasta tener # velo en este lado.`,
          other: `Deje ${mm(gapMm)} de cabello sobre el papel y haga otra raya, en paralelo a la primera, hasta tener # velos en este lado.`,
        }),
        "Después el otro lado, contando las mismas filas desde el mismo punto.",
        "Revise pronto, a los cinco minutos: velos tan finos van por delante de cualquier tejido.",
      ],
    },
  }) satisfies Partial<HouseWords>
