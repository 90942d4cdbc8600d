import type { Tools } from "../../tools"
import type { HouseWords } from "./houseWords"
import type { stepWords } from "./stepWords"

/** Techniques that frame the face. */
export const frames = (t: Tools, { stitches, mm }: ReturnType<typeof stepWords>) =>
  ({
    "bright-frame": {
      name: "Contour lumineux",
      aim: "Un bord clair autour du visage, qui s’allège vers l’arrière.",
      notes:
        "Pour un contour visible cheveux lâchés et attachés. « Plus clair au bord » met une tranche à la lisière même ; « plus doux au bord » la tricote et repousse plus en douceur. À la tempe, les cheveux fins s’éclaircissent d’abord : y contrôler en premier. Laisser les follets.",
      steps: ({ isSoft, stitch, gapMm, firstMm, edgeDepthMm, depthMm, wovenMm, driftMm }) => [
        `Peigner les follets vers l’avant. Séparer de juste à côté du milieu du front jusqu’au golfe, à ${mm(firstMm)} derrière la lisière.`,
        isSoft
          ? `Tricoter ${stitches("fine")} dans les ${mm(edgeDepthMm)} devant la séparation. Placer la papillote près de la racine et enduire les deux faces.`
          : `Prendre tout sur ${mm(edgeDepthMm)} devant la séparation : on doit voir la lumière à travers. Placer la papillote près de la racine et enduire les deux faces.`,
        "Laisser un peu de cheveux au coin du golfe, puis faire de même de là jusqu’à la tempe. Deux papillotes courtes tiennent plus à plat qu’une seule pliée au coin.",
        isSoft
          ? `Laisser ${mm(gapMm)}. Séparer derrière les deux papillotes, ${mm(driftMm)} plus loin du visage à la tempe qu’à l’avant, et prendre une tranche de ${mm(depthMm)}.`
          : `Laisser ${mm(gapMm)}. Séparer derrière les deux papillotes, ${mm(driftMm)} plus loin du visage à la tempe qu’à l’avant, et tricoter ${stitches(stitch)} dans ${mm(wovenMm)}.`,
        `Laisser ${mm(gapMm)} et séparer encore une fois, en descendant plus vers l’arrière. Tricoter ${stitches(stitch)} dans ${mm(wovenMm)} : ce rang porte la lumière dans les cheveux derrière.`,
        "Coucher chaque papillote vers l’arrière, loin du visage, et garder les plis propres pour que rien ne coule sur la peau.",
        "Placer l’autre côté à partir des mêmes repères. Contrôler d’abord les deux papillotes des tempes.",
      ],
    },
    "off-centre-frame": {
      name: "Contour décentré",
      aim: "Un contour qui tombe d’une raie de côté et suit ses deux longueurs.",
      notes:
        "Pour une raie portée sur le côté. Regarder où tombent les cheveux avant de séparer. Le côté long porte plus de papillotes que le court, exprès. Rien n’est pris à travers la raie : aucune papillote ne s’y voit donc comme une ligne.",
      steps: ({ isRight, stitch, gapMm, depthMm, wovenMm, firstMm }) => [
        isRight
          ? "Peigner les cheveux à la raie, à droite de la personne, et voir jusqu’où ils tombent de chaque côté. Laisser quelques millimètres intacts des deux côtés de la raie."
          : "Peigner les cheveux à la raie, à gauche de la personne, et voir jusqu’où ils tombent de chaque côté. Laisser quelques millimètres intacts des deux côtés de la raie.",
        `Commencer par le côté long : de la raie au golfe, prendre une tranche de ${mm(depthMm)}, séparée à ${mm(firstMm)} derrière la lisière.`,
        "Continuer d’au-dessous du golfe jusqu’à la tempe avec une seconde tranche de même épaisseur.",
        `Laisser ${mm(gapMm)}. Derrière chacune des deux, tricoter ${stitches(stitch)} dans ${mm(wovenMm)} ; à la tempe, le tricotage recule.`,
        `Sur le côté court, prendre une tranche de la raie à la tempe, et laisser ${mm(gapMm)}.`,
        `Derrière elle, tricoter ${stitches(stitch)} dans ${mm(wovenMm)}, en reculant vers la tempe.`,
        "Rabattre les cheveux sur les papillotes et regarder de face : la raie doit être libre des deux côtés.",
      ],
    },
    "unequal-sides": {
      name: "Côté fort, côté léger",
      aim: "Plus de lumière du côté où vont les cheveux, une seule tranche fine de l’autre.",
      notes:
        "Pour des cheveux rejetés d’un côté, glissés derrière une oreille ou coupés plus court d’un côté. La différence est voulue : montrer les deux côtés à la personne dans le miroir avant de commencer. Le côté léger a une papillote et est prêt tôt.",
      steps: ({ isLeft, stitch, count, gapMm, depthMm, wovenMm, firstMm }) => [
        isLeft
          ? "La gauche de la personne est le côté fort. Faire la raie comme elle est portée et pincer l’autre côté à l’écart."
          : "La droite de la personne est le côté fort. Faire la raie comme elle est portée et pincer l’autre côté à l’écart.",
        `Prendre une tranche de ${mm(depthMm)} de juste à côté du milieu du front jusqu’à la tempe, séparée à ${mm(firstMm)} derrière la lisière.`,
        `Laisser ${mm(gapMm)} et tricoter ${stitches(stitch)} dans ${mm(wovenMm)} derrière elle, parallèlement à la tranche.`,
        t.count(count, {
          one: `Cela fait # rang sur le côté fort, à ${mm(gapMm)} du précédent.`,
          other: `Continuer jusqu’à avoir # rangs sur le côté fort, chacun à ${mm(gapMm)} du précédent.`,
        }),
        `Ensuite le côté léger : une tranche de ${mm(depthMm)} près du golfe, et rien derrière.`,
        "Retirer le côté léger seul quand il est prêt ; ne pas attendre le côté fort.",
      ],
    },
    "fan-frame": {
      name: "Contour en éventail",
      aim: "Des rangs au-dessus du front et un éventail de séparations qui s’ouvre de chaque côté.",
      notes:
        "Pour couvrir plus qu’un contour au bord, l’arrière restant tel quel. L’éventail part juste derrière le golfe et s’ouvre vers la patte, pour que la lumière s’étale quand les cheveux tombent. Le « fondu crêpé » crêpe tout sauf la première papillote et estompe davantage.",
      steps: ({ isMelted, stitch, count, gapMm, depthMm, wovenMm, foreheadMm, opensMm }) => [
        "Isoler le devant d’oreille à oreille et pincer l’arrière à l’écart ; il reste tel quel.",
        `Au-dessus du front, séparer à ${mm(foreheadMm)} derrière la lisière, d’un golfe à l’autre sans le dépasser, et tricoter ${stitches(stitch)} dans ${mm(wovenMm)}.`,
        t.count(count, {
          one: "Un rang suffit. Laisser les cheveux derrière tels quels.",
          other: `Continuer jusqu’à avoir # rangs, avec ${mm(gapMm)} entre eux.`,
        }),
        `D’un côté, de derrière le golfe jusqu’au-dessus de la patte, prendre une tranche de ${mm(depthMm)} le long de la lisière : la première branche de l’éventail.`,
        isMelted
          ? `Chaque branche derrière elle part ${mm(gapMm)} plus en arrière et s’ouvre de ${mm(opensMm)} de plus en bas. Tricoter ${stitches(stitch)}, crêper environ la moitié de chaque maille vers la racine en deux à quatre coups, et commencer le produit après le coussin.`
          : `La branche suivante part ${mm(gapMm)} plus en arrière et s’ouvre de ${mm(opensMm)} en bas : tricoter ${stitches(stitch)} dans ${mm(wovenMm)}. La troisième s’ouvre d’autant encore et est une tranche de ${mm(depthMm)}.`,
        "Coucher les papillotes vers l’arrière en éventail, loin du visage. Laisser des cheveux entre le front et la première branche : trois papillotes ne doivent pas se rejoindre au golfe.",
        "Faire l’autre côté à partir des mêmes repères, branche par branche.",
      ],
    },
    "temple-to-temple": {
      name: "Micro-tranches, tempe à tempe",
      aim: "Des tranches très fines de chaque côté ; on voit la lumière à travers.",
      notes:
        "Pour un premier éclaircissement à peine visible. Garder les tranches à 1–2 mm : plus épaisses, elles peuvent se lire comme des rayures. Les tranches fines s’éclaircissent vite, donc contrôler tôt.",
      steps: ({ count, depthMm, gapMm, firstMm }) => [
        `Séparer de juste à côté du milieu du front jusqu’à la tempe, à ${mm(firstMm)} derrière la lisière et parallèlement à elle.`,
        `Du bout de la queue du peigne, prendre ${mm(depthMm)} devant la séparation. Tenir à contre-jour : on doit voir à travers sur toute la longueur.`,
        "Placer une papillote près de la racine, poser la tranche à plat et l’enduire finement des deux faces.",
        t.count(count, {
          one: `Laisser ${mm(gapMm)} de cheveux au-dessus de la papillote et séparer de nouveau, parallèlement à la première, jusqu’à avoir # tranche de ce côté.`,
          other: `Laisser ${mm(gapMm)} de cheveux au-dessus de la papillote et séparer de nouveau, parallèlement à la première, jusqu’à avoir # tranches de ce côté.`,
        }),
        "Puis l’autre côté, en comptant les mêmes rangs à partir du même repère.",
        "Contrôler tôt, après cinq minutes : des tranches si fines devancent tout tricotage.",
      ],
    },
  }) satisfies Partial<HouseWords>
