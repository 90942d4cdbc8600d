import type { HouseWords } from "../../en/techniques/houseWords"
import type { Tools } from "../../tools"
import type { stepWords } from "./stepWords"

/** Techniques of the hairline, the top and the nape. */
export const others = (t: Tools, { stitches, mm }: ReturnType<typeof stepWords>) =>
  ({
    "full-hairline": {
      name: "Contorno completo",
      aim: "Velos finos todo alrededor, para llevar el cabello recogido.",
      notes:
        "Para cabello que se recoge o se lleva detrás de las orejas. El cabello de detrás de la oreja y de la nuca suele ser más grueso y oscuro y aclara más tarde que la sien. No sobre piel dolorida.",
      steps: ({ depthMm, faceMm, napeMm }) => [
        "Peine el cabello como se lleva recogido y vea qué borde se muestra.",
        `Empiece por la nuca, donde el cabello aclara al final: haga la raya a ${mm(napeMm)} dentro del contorno, desde junto al centro hasta la esquina, y tome ${mm(depthMm)} hacia el borde.`,
        `Siga hacia arriba por detrás de la oreja con un velo del mismo grosor, a ${mm(napeMm)} dentro del contorno. Doble la oreja hacia delante y cúbrala.`,
        `Después la parte delantera: de patilla a sien, de sien a entrada, de entrada hasta junto al centro, cada uno a ${mm(faceMm)} detrás del contorno y de ${mm(depthMm)} de grosor.`,
        "Coloque cada papel cerca de la raíz y cubra las dos caras. En la patilla use un papel corto, para que su peso no lo arrastre.",
        "Mantenga el producto fuera de la piel más allá del contorno; limpie de inmediato lo que llegue a ella.",
        "Haga el otro lado en el mismo orden. Revise primero las sienes: suelen estar listas antes que la nuca.",
      ],
    },
    "fringe-panel": {
      name: "Panel de flequillo",
      aim: "Un flequillo más claro con el borde natural.",
      notes:
        "Para un flequillo que se lleva caído o abierto como cortina. El borde queda natural, así que el crecimiento se nota menos. Si hay que cortar el flequillo, córtelo antes.",
      steps: ({ stitch, count, depthMm, gapMm, babyHairsMm, firstMm, sliceMm, lastMm }) => [
        `Separe con el peine ${mm(babyHairsMm)} de pelitos de bebé a lo largo de la frente y sujételos con una pinza: quedan como están.`,
        `Haga la raya de entrada a entrada, a ${mm(firstMm)} detrás del contorno, y teja ${stitches(stitch)} en los ${mm(depthMm)} delante de ella.`,
        "Coloque el papel bajo las puntadas, cerca de la raíz pero sin tocar la piel de la frente, y cubra desde la zona de la raíz hasta las puntas.",
        t.count(count, {
          one: `Deje ${mm(gapMm)} y repita, un poco más estrecho cada vez, hasta tener # tejido en el flequillo.`,
          other: `Deje ${mm(gapMm)} y repita, un poco más estrecho cada vez, hasta tener # tejidos en el flequillo.`,
        }),
        `Deje ${mm(gapMm)} y cierre con un velo de ${mm(sliceMm)}, a ${mm(lastMm)} detrás del contorno. Su luz se ve desde atrás.`,
        "Lleve los papeles hacia atrás sobre la cabeza, para que ninguno quede contra la ceja. Revise primero el primero: el cabello del borde es el más fino.",
      ],
    },
    "grey-blend": {
      name: "Canas integradas en el contorno",
      aim: "Luz fina entre las primeras canas, para que se noten menos al crecer.",
      notes:
        "Para canas que se ven primero delante y en las sienes. No cubre las canas: pone luz a su lado. El cabello con canas puede ser grueso y lento en tomar el producto, o suave y rápido: revise un mechón con canas y otro con color por separado.",
      steps: ({ stitch, count, depthMm, gapMm, firstMm, startMm }) => [
        "Peine el cabello hacia atrás y vea dónde hay más canas; empiece por ese lado.",
        `Haga la raya a ${mm(firstMm)} detrás del contorno, desde junto al centro frontal hasta la entrada, y teja ${stitches(stitch)} en ${mm(depthMm)}.`,
        "Tome las puntadas por igual entre canas y cabello con color. No persiga canas sueltas: eso hace una mancha.",
        `Siga de la entrada a la sien y de la sien a la patilla a la misma distancia. El producto empieza a ${mm(startMm)} del cuero cabelludo.`,
        count === 1
          ? "Una fila es todo: deje como está el cabello de detrás."
          : t.count(count, {
              one: `Deje ${mm(gapMm)} y repita detrás, desde junto al centro hasta la sien, hasta tener # fila ahí.`,
              other: `Deje ${mm(gapMm)} y repita detrás, desde junto al centro hasta la sien, hasta tener # filas ahí.`,
            }),
        "Haga el otro lado desde los mismos puntos.",
        "Revise un mechón con canas y otro con color en el primer papel; retire cada papel cuando el más lento de los dos esté listo, dentro del tiempo del fabricante.",
      ],
    },
    "coil-frame": {
      name: "Marco para rizo afro",
      aim: "Pocos paneles anchos con puntadas gruesas que se siguen viendo cuando el rizo encoge.",
      notes:
        "Para cabello muy rizado que se lleva con su propia forma. Las puntadas finas se pierden en el rizo; los paneles anchos se ven como luz. El borde se deja fuera: es lo primero que se rompe y no admite tensión. El cabello muy rizado puede ser seco y frágil: prueba de mechón, sin tirones, y revise pronto.",
      steps: ({ stitch, count, depthMm, gapMm, firstMm, edgesMm, startMm }) => [
        "Mire los rizos en seco y como se llevan, y marque dónde caen alrededor del rostro. Después estire el cabello con suavidad; no lo peine nunca desde la raíz.",
        `Deje fuera ${mm(edgesMm)} de bordes a lo largo del contorno y sujételos sin tensión.`,
        `Haga la raya a ${mm(firstMm)} detrás del contorno, desde junto al centro frontal hasta la entrada, y teja ${stitches(stitch)} en ${mm(depthMm)}.`,
        `Sujete el panel sin apretar. Empiece el producto a ${mm(startMm)} del cuero cabelludo y repártalo por cada rizo hasta las puntas, por las dos caras.`,
        "Doble el papel ancho y plano: los rizos apretados toman el producto de forma desigual. Después el segundo panel, de la entrada a la sien.",
        count === 1
          ? "Deje como está el cabello de detrás."
          : t.count(count, {
              one: `Deje ${mm(gapMm)} y repita detrás de los dos, hasta tener # fila en este lado.`,
              other: `Deje ${mm(gapMm)} y repita detrás de los dos, hasta tener # filas en este lado.`,
            }),
        "Haga el otro lado. Revise la elasticidad además del nivel, y mantenga el producto húmedo.",
      ],
    },
    "partial-weave": {
      name: "Tejido parcial",
      aim: "Tejidos delante y en los lados, el resto natural.",
      notes:
        "Para luz alrededor de todo el rostro que conserva profundidad. Muchos papeles: el primero lleva mucho puesto cuando se coloca el último, así que retire cada uno cuando esté listo o mezcle más suave el primer bol.",
      steps: ({ stitch, count, depthMm, gapMm, firstMm, lastMm }) => [
        "Separe la parte delantera y los lados de la trasera, de oreja a oreja por la coronilla. Sujete la trasera con una pinza.",
        `Empiece en el contorno: haga la raya a ${mm(firstMm)} detrás de él, desde junto al centro frontal hasta debajo de la sien, y teja ${stitches(stitch)} en ${mm(depthMm)}.`,
        "Hunda la cola por igual: cuanto más entra, más clara queda la fila. Coloque el papel cerca de la raíz y cubra las dos caras.",
        t.count(count, {
          one: `Deje ${mm(gapMm)} y haga otra raya, en paralelo, hasta tener # fila en este lado; la última queda a ${mm(lastMm)} detrás del contorno.`,
          other: `Deje ${mm(gapMm)} y haga otra raya, en paralelo, hasta tener # filas en este lado; la última queda a ${mm(lastMm)} detrás del contorno.`,
        }),
        "Doble cada papel una vez y póngalo sobre el anterior, lejos de la cara. Las filas anchas necesitan dos papeles lado a lado, solapados un dedo.",
        "Haga el otro lado en el mismo orden. Mezcle otra vez antes de que el bol se espese.",
        "Revise primero la primera fila del primer lado, después cada cinco minutos.",
      ],
    },
    "crown-halo": {
      name: "Halo de coronilla",
      aim: "Luz a través de la coronilla, bajo una capa natural.",
      notes:
        "Para luz que se mueve al girar la cabeza. La capa superior suaviza la línea de crecimiento. Debe ser lo bastante gruesa para caer sobre los papeles cuando el cabello va suelto.",
      steps: ({ stitch, count, depthMm, veilMm }) => [
        `Peine hacia delante una capa superior de ${mm(veilMm)}, de lado a lado delante de la coronilla, y sujétela con una pinza: queda natural.`,
        `Detrás haga una raya recta con el peine de cola, de un lado al otro, y teja ${stitches(stitch)} en ${mm(depthMm)}.`,
        "Use dos o tres papeles lado a lado; sostenga el cabello recto hacia arriba para que las raíces no queden aplastadas.",
        count === 1
          ? "Deje caer la capa superior sobre los papeles y compruebe que no se ve nada."
          : t.count(count, {
              one: "Siga hacia la coronilla hasta tener # fila ahí, con la raya en paralelo a la anterior. Después deje caer la capa superior y compruebe que no se ve nada.",
              other:
                "Siga hacia la coronilla hasta tener # filas ahí, cada una con la raya en paralelo a la anterior. Después deje caer la capa superior sobre ellas y compruebe que no se ve nada.",
            }),
        "La coronilla está caliente y tapada: revise aquí antes que los lados.",
      ],
    },
    "nape-peek": {
      name: "Nuca oculta",
      aim: "Velos ocultos en la nuca que se ven con el cabello recogido.",
      notes:
        "Para una sorpresa bajo cabello oscuro, o para llevar semirrecogido. El cabello de la nuca suele ser grueso y lento: puede necesitar su propio bol o colocarse primero. No donde un cuello de ropa roce piel dolorida.",
      steps: ({ count, depthMm, gapMm, firstMm, elevationDeg }) => [
        "Incline la cabeza hacia delante y sujete con una pinza todo lo que queda por encima del hueso occipital.",
        `Haga la raya a ${mm(firstMm)} dentro del contorno, desde la esquina de la nuca hasta junto al centro, y tome ${mm(depthMm)} hacia el cuello.`,
        `Sostenga el cabello hacia abajo y hacia fuera, a ${t.whole(elevationDeg)}° de la cabeza y no más alto, para que la raíz quede como va a crecer. Cubra las dos caras.`,
        count === 1
          ? "Deje caer encima el cabello de arriba y vea si se muestra tanto como se desea."
          : t.count(count, {
              one: `Deje ${mm(gapMm)} y tome el siguiente por encima, hasta tener # velo en este lado.`,
              other: `Deje ${mm(gapMm)} y tome el siguiente por encima, hasta tener # velos en este lado.`,
            }),
        "Haga el otro lado. Mantenga el producto lejos del cuello, donde roza la ropa.",
      ],
    },
  }) satisfies Partial<HouseWords>
