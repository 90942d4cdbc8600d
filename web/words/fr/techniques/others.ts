import type { Tools } from "../../tools"
import type { HouseWords } from "./houseWords"
import type { stepWords } from "./stepWords"

/** Techniques of the hairline, the top and the nape. */
export const others = (t: Tools, { stitches, mm }: ReturnType<typeof stepWords>) =>
  ({
    "full-hairline": {
      name: "Lisière complète",
      aim: "Des tranches fines tout autour, pour des cheveux portés relevés.",
      notes:
        "Pour des cheveux attachés ou glissés derrière les oreilles. Derrière l’oreille et à la nuque, les cheveux sont souvent plus épais et plus foncés et s’éclaircissent plus tard qu’à la tempe. Pas sur une peau irritée.",
      steps: ({ depthMm, faceMm, napeMm }) => [
        "Peigner les cheveux relevés comme ils sont portés, et voir quel bord apparaît.",
        `Commencer à la nuque, où les cheveux s’éclaircissent en dernier : séparer à ${mm(napeMm)} à l’intérieur de la lisière, de juste à côté du milieu jusqu’au coin, et prendre ${mm(depthMm)} vers le bord.`,
        `Remonter derrière l’oreille avec une tranche de même épaisseur, à ${mm(napeMm)} à l’intérieur de la lisière. Replier l’oreille vers l’avant et la couvrir.`,
        `Puis l’avant : de la patte à la tempe, de la tempe au golfe, du golfe jusqu’à côté du milieu, chaque fois à ${mm(faceMm)} derrière la lisière et ${mm(depthMm)} d’épaisseur.`,
        "Placer chaque papillote près de la racine et enduire les deux faces. À la patte, prendre une papillote courte, pour que son poids ne la fasse pas glisser.",
        "Tenir le produit à l’écart de la peau hors de la lisière ; essuyer aussitôt ce qui y arrive.",
        "Faire l’autre côté dans le même ordre. Contrôler d’abord les tempes : elles sont en général prêtes avant la nuque.",
      ],
    },
    "fringe-panel": {
      name: "Panneau de frange",
      aim: "Une frange plus claire au bord naturel.",
      notes:
        "Pour une frange portée baissée ou en rideau. Le bord reste naturel, la repousse est donc plus douce. Si la frange doit être coupée, la couper d’abord.",
      steps: ({ stitch, count, depthMm, gapMm, babyHairsMm, firstMm, sliceMm, lastMm }) => [
        `Isoler ${mm(babyHairsMm)} de follets le long du front et les pincer à l’écart : ils restent tels quels.`,
        `Séparer d’un golfe à l’autre, à ${mm(firstMm)} derrière la lisière, et tricoter ${stitches(stitch)} dans les ${mm(depthMm)} devant la séparation.`,
        "Placer la papillote sous les mailles, près de la racine mais sans toucher la peau du front, et enduire de la zone des racines aux pointes.",
        t.count(count, {
          one: `Laisser ${mm(gapMm)} et répéter, un peu moins large chaque fois, jusqu’à avoir # tricotage dans la frange.`,
          other: `Laisser ${mm(gapMm)} et répéter, un peu moins large chaque fois, jusqu’à avoir # tricotages dans la frange.`,
        }),
        `Laisser ${mm(gapMm)} et finir par une tranche de ${mm(sliceMm)}, à ${mm(lastMm)} derrière la lisière. Sa lumière transparaît par derrière.`,
        "Coucher les papillotes vers l’arrière de la tête, pour qu’aucune ne touche le sourcil. Contrôler d’abord la première : au bord, les cheveux sont les plus fins.",
      ],
    },
    "grey-blend": {
      name: "Fondu des blancs à la lisière",
      aim: "Une lumière fine parmi les premiers cheveux blancs, pour qu’ils se voient moins en poussant.",
      notes:
        "Pour des cheveux blancs qui apparaissent d’abord devant et aux tempes. Cela ne couvre pas les blancs : cela met de la lumière à côté. Les cheveux blancs peuvent être épais et lents à prendre le produit, ou souples et rapides : contrôler à part une mèche blanche et une mèche pigmentée.",
      steps: ({ stitch, count, depthMm, gapMm, firstMm, startMm }) => [
        "Peigner les cheveux en arrière et voir où les blancs sont le plus denses ; commencer de ce côté.",
        `Séparer à ${mm(firstMm)} derrière la lisière, de juste à côté du milieu du front jusqu’au golfe, et tricoter ${stitches(stitch)} dans ${mm(depthMm)}.`,
        "Prendre les mailles dans les cheveux blancs comme dans les pigmentés. Ne pas courir après des cheveux blancs isolés : cela fait une plaque.",
        `Continuer du golfe à la tempe et de la tempe à la patte à la même distance. Le produit commence à ${mm(startMm)} du cuir chevelu.`,
        count === 1
          ? "Un seul rang : laisser les cheveux derrière tels quels."
          : `Laisser ${mm(gapMm)} et répéter derrière, de juste à côté du milieu jusqu’à la tempe, jusqu’à avoir ${t.count(count, { one: "# rang", other: "# rangs" })}.`,
        "Faire l’autre côté à partir des mêmes repères.",
        "Contrôler une mèche blanche et une mèche pigmentée dans la première papillote ; retirer chaque papillote quand la plus lente des deux est prête, dans le temps du fabricant.",
      ],
    },
    "coil-frame": {
      name: "Contour pour boucles serrées",
      aim: "Quelques panneaux larges à mailles larges, encore visibles quand les boucles remontent.",
      notes:
        "Pour des cheveux à boucles serrées portés au naturel. Les mailles fines disparaissent dans les boucles ; les panneaux larges se lisent comme de la lumière. Le bord est laissé : il casse le premier et ne supporte pas de tension. Ces cheveux peuvent être secs et fragiles : test mèche, ne pas tirer, et contrôler tôt.",
      steps: ({ stitch, count, depthMm, gapMm, firstMm, edgesMm, startMm }) => [
        "Regarder les boucles sèches, comme elles sont portées, et marquer où elles tombent autour du visage. Puis étirer les cheveux doucement ; ne jamais les démêler en partant de la racine.",
        `Laisser ${mm(edgesMm)} de bordure le long de la lisière et la tenir en arrière sans tension.`,
        `Séparer à ${mm(firstMm)} derrière la lisière, de juste à côté du milieu du front jusqu’au golfe, et tricoter ${stitches(stitch)} dans ${mm(depthMm)}.`,
        `Tenir le panneau sans serrer. Commencer le produit à ${mm(startMm)} du cuir chevelu et le faire pénétrer dans chaque boucle jusqu’aux pointes, des deux faces.`,
        "Plier la papillote large et plate : des boucles écrasées prennent le produit irrégulièrement. Puis le second panneau, du golfe à la tempe.",
        count === 1
          ? "Laisser les cheveux derrière tels quels."
          : `Laisser ${mm(gapMm)} et répéter derrière les deux, jusqu’à avoir ${t.count(count, { one: "# rang", other: "# rangs" })} de ce côté.`,
        "Faire l’autre côté. Contrôler l’élasticité autant que la hauteur, et garder le produit humide.",
      ],
    },
    "partial-weave": {
      name: "Tricotage partiel",
      aim: "Des tricotages devant et sur les côtés, le reste au naturel.",
      notes:
        "Pour de la lumière tout autour du visage en gardant de la profondeur. Beaucoup de papillotes : la première pose depuis longtemps quand la dernière est placée ; retirer donc chacune quand elle est prête, ou faire le premier bol plus faible.",
      steps: ({ stitch, count, depthMm, gapMm, firstMm, lastMm }) => [
        "Isoler le devant et les côtés de l’arrière, d’oreille à oreille par le vertex. Pincer l’arrière à l’écart.",
        `Commencer à la lisière : séparer à ${mm(firstMm)} derrière elle, de juste à côté du milieu du front jusqu’au-dessous de la tempe, et tricoter ${stitches(stitch)} dans ${mm(depthMm)}.`,
        "Plonger la queue du peigne régulièrement : sa profondeur décide de la clarté du rang. Placer la papillote près de la racine et enduire les deux faces.",
        t.count(count, {
          one: `Laisser ${mm(gapMm)} et séparer de nouveau, parallèlement, jusqu’à avoir # rang de ce côté ; le dernier est à ${mm(lastMm)} derrière la lisière.`,
          other: `Laisser ${mm(gapMm)} et séparer de nouveau, parallèlement, jusqu’à avoir # rangs de ce côté ; le dernier est à ${mm(lastMm)} derrière la lisière.`,
        }),
        "Plier chaque papillote une fois et la coucher sur la précédente, loin du visage. Les rangs larges demandent deux papillotes côte à côte, qui se recouvrent d’un doigt.",
        "Faire l’autre côté dans le même ordre. Refaire un mélange avant que le bol n’épaississe.",
        "Contrôler d’abord le premier rang du premier côté, puis toutes les cinq minutes.",
      ],
    },
    "crown-halo": {
      name: "Halo du vertex",
      aim: "De la lumière sur le vertex, sous un voile naturel.",
      notes:
        "Pour une lumière qui bouge quand la tête tourne. Le voile du dessus adoucit la ligne de repousse. Il doit être assez épais pour retomber sur les papillotes quand les cheveux sont lâchés.",
      steps: ({ stitch, count, depthMm, veilMm }) => [
        `Peigner vers l’avant un voile de ${mm(veilMm)} sur le dessus, d’un côté à l’autre devant le vertex, et le pincer : il reste naturel.`,
        `Derrière, séparer tout droit au peigne à queue, d’un côté à l’autre, et tricoter ${stitches(stitch)} dans ${mm(depthMm)}.`,
        "Prendre deux ou trois papillotes côte à côte ; tenir les cheveux à la verticale de la tête pour ne pas écraser les racines.",
        count === 1
          ? "Laisser retomber le voile sur les papillotes et voir que rien ne transparaît."
          : `Continuer vers le vertex jusqu’à avoir ${t.count(count, { one: "# rang", other: "# rangs" })}, chacun séparé parallèlement au précédent. Puis laisser retomber le voile et voir que rien ne transparaît.`,
        "Le vertex est chaud et couvert : y contrôler avant les côtés.",
      ],
    },
    "nape-peek": {
      name: "Nuque cachée",
      aim: "Des tranches cachées à la nuque, visibles cheveux relevés.",
      notes:
        "Pour une surprise sous des cheveux foncés, ou des cheveux portés mi-relevés. Les cheveux de nuque sont souvent épais et lents : il leur faut parfois leur propre bol, ou être placés en premier. Pas là où un col frotte une peau irritée.",
      steps: ({ count, depthMm, gapMm, firstMm, elevationDeg }) => [
        "Pencher la tête en avant et pincer à l’écart tout ce qui est au-dessus de l’os occipital.",
        `Séparer à ${mm(firstMm)} à l’intérieur de la lisière, du coin de nuque jusqu’à côté du milieu, et prendre ${mm(depthMm)} vers le cou.`,
        `Tenir les cheveux vers le bas et l’extérieur, à ${t.whole(elevationDeg)}° de la tête et pas plus, pour que la racine soit couchée comme elle poussera. Enduire les deux faces.`,
        count === 1
          ? "Laisser retomber les cheveux du dessus et voir si cela se montre autant que souhaité."
          : `Laisser ${mm(gapMm)} et prendre la suivante au-dessus, jusqu’à avoir ${t.count(count, { one: "# tranche", other: "# tranches" })} de ce côté.`,
        "Faire l’autre côté. Tenir le produit à l’écart du cou, là où les cols frottent.",
      ],
    },
  }) satisfies Partial<HouseWords>
