import type { others as english } from "../../en/techniques/others"

/** Techniques of the hairline, the top and the nape. */
export const others: typeof english = (t, { stitches, mm }) => {
  const rowsLie = (count: number) => t.count(count, { one: "# Reihe liegt", other: "# Reihen liegen" })
  return {
    "full-hairline": {
      name: "Ganze Haarlinie",
      aim: "Feine Slices rundherum, für hochgestecktes Haar.",
      notes:
        "Für Haar, das zusammengebunden oder hinter die Ohren gesteckt wird. Das Haar hinter dem Ohr und im Nacken ist oft dicker und dunkler und hellt später auf als an der Schläfe. Nicht über wunder Haut.",
      steps: ({ depthMm, faceMm, napeMm }) => [
        "Das Haar so kämmen, wie es hochgesteckt wird, und sehen, welcher Rand sich zeigt.",
        `Im Nacken beginnen, wo das Haar zuletzt aufhellt: ${mm(napeMm)} innerhalb der Haarlinie von neben der Mitte bis zur Ecke scheiteln und ${mm(depthMm)} zum Rand hin nehmen.`,
        `Hinter dem Ohr mit einem Slice gleicher Tiefe weiter nach oben, ${mm(napeMm)} innerhalb der Haarlinie. Das Ohr nach vorn klappen und abdecken.`,
        `Dann vorn: Kotelette bis Schläfe, Schläfe bis Stirnecke, Stirnecke bis neben die Mitte, jeweils ${mm(faceMm)} hinter der Haarlinie und ${mm(depthMm)} tief.`,
        "Jede Folie dicht an den Ansatz legen und beidseitig bestreichen. An der Kotelette eine kurze Folie nehmen, damit ihr Gewicht sie nicht abzieht.",
        "Produkt von der Haut außerhalb der Haarlinie fernhalten; was dorthin gerät, sofort abwischen.",
        "Die andere Seite in derselben Reihenfolge arbeiten. Die Schläfen zuerst kontrollieren: Sie sind meist vor dem Nacken fertig.",
      ],
    },
    "fringe-panel": {
      name: "Pony-Panel",
      aim: "Ein hellerer Pony mit natürlichem Rand.",
      notes:
        "Für einen Pony, der gerade fällt oder wie ein Vorhang geteilt ist. Der Rand bleibt natürlich, so wächst er weicher heraus. Soll der Pony geschnitten werden, zuerst schneiden.",
      steps: ({ stitch, count, depthMm, gapMm, babyHairsMm, firstMm, sliceMm, lastMm }) => [
        `Babyhaare entlang der Stirn, ${mm(babyHairsMm)}, herauskämmen und wegstecken: Sie bleiben, wie sie sind.`,
        `Von Stirnecke zu Stirnecke scheiteln, ${mm(firstMm)} hinter der Haarlinie, und aus den ${mm(depthMm)} davor ${stitches(stitch)} weben.`,
        "Die Folie unter die Stiche legen, dicht am Ansatz, aber nicht auf die Haut der Stirn, und vom Ansatzbereich bis in die Spitzen bestreichen.",
        `Dann ${mm(gapMm)} stehen lassen und wiederholen, jedes Mal etwas schmaler, bis ${t.count(count, { one: "# Weaving im Pony liegt", other: "# Weavings im Pony liegen" })}.`,
        `Dann ${mm(gapMm)} stehen lassen und mit einem Slice von ${mm(sliceMm)} abschließen, ${mm(lastMm)} hinter der Haarlinie. Sein Licht scheint von hinten durch.`,
        "Die Folien nach hinten über den Kopf legen, damit keine an der Braue liegt. Die erste zuerst kontrollieren: Das Haar am Rand ist am feinsten.",
      ],
    },
    "grey-blend": {
      name: "Grau-Blending an der Haarlinie",
      aim: "Feines Licht im ersten Grau, damit das Grau beim Nachwachsen weniger auffällt.",
      notes:
        "Für Grau, das sich zuerst vorn und an den Schläfen zeigt. Es deckt kein Grau ab: Es setzt Licht daneben. Graues Haar kann dick sein und Produkt langsam annehmen, oder weich und schnell sein: eine graue und eine farbige Strähne einzeln kontrollieren.",
      steps: ({ stitch, count, depthMm, gapMm, firstMm, startMm }) => [
        "Das Haar zurückkämmen und sehen, wo das Grau am dichtesten ist; auf dieser Seite beginnen.",
        `Von neben der Stirnmitte bis zur Stirnecke scheiteln, ${mm(firstMm)} hinter der Haarlinie, und aus ${mm(depthMm)} ${stitches(stitch)} weben.`,
        "Die Stiche durch graues und farbiges Haar gleichermaßen führen. Nicht einzelne graue Haare suchen: Das gibt einen Fleck.",
        `Von der Stirnecke zur Schläfe und von der Schläfe zur Kotelette im selben Abstand weiter. Das Produkt beginnt ${mm(startMm)} von der Kopfhaut.`,
        count === 1
          ? "Eine Reihe genügt: Das Haar dahinter bleibt, wie es ist."
          : `Dann ${mm(gapMm)} stehen lassen und dahinter von neben der Mitte bis zur Schläfe wiederholen, bis dort ${rowsLie(count)}.`,
        "Die andere Seite von denselben Punkten aus arbeiten.",
        "In der ersten Folie eine graue und eine farbige Strähne kontrollieren; jede Folie abnehmen, wenn die langsamere von beiden fertig ist, innerhalb der Zeit des Herstellers.",
      ],
    },
    "coil-frame": {
      name: "Rahmen für enge Locken",
      aim: "Wenige breite Panels mit groben Stichen, die auch in eingesprungenen Locken zu sehen sind.",
      notes:
        "Für eng gelocktes Haar, das im eigenen Muster getragen wird. Feine Stiche verschwinden in Locken; breite Panels wirken als Licht. Der Rand bleibt ausgelassen: Er bricht zuerst und verträgt keinen Zug. Lockiges Haar kann trocken und brüchig sein: Probesträhne, kein Ziehen und früh kontrollieren.",
      steps: ({ stitch, count, depthMm, gapMm, firstMm, edgesMm, startMm }) => [
        "Die Locken trocken und wie getragen ansehen und markieren, wo sie ums Gesicht fallen. Dann das Haar sanft strecken; nie vom Ansatz auskämmen.",
        `Entlang der Haarlinie ${mm(edgesMm)} Rand auslassen und ohne Zug zurückhalten.`,
        `Von neben der Stirnmitte bis zur Stirnecke scheiteln, ${mm(firstMm)} hinter der Haarlinie, und aus ${mm(depthMm)} ${stitches(stitch)} weben.`,
        `Das Panel locker halten. Das Produkt ${mm(startMm)} von der Kopfhaut beginnen und durch jede Locke bis in die Spitzen einarbeiten, beidseitig.`,
        "Die Folie breit und flach falten: Gepresste Locken nehmen Produkt ungleichmäßig an. Dann das zweite Panel, von der Stirnecke zur Schläfe.",
        count === 1
          ? "Das Haar dahinter so lassen, wie es ist."
          : `Dann ${mm(gapMm)} stehen lassen und hinter beiden wiederholen, bis auf dieser Seite ${rowsLie(count)}.`,
        "Die andere Seite arbeiten. Dehnung ebenso wie Tonhöhe kontrollieren und das Produkt feucht halten.",
      ],
    },
    "partial-weave": {
      name: "Teil-Weaving",
      aim: "Weavings vorn und an den Seiten, der Rest bleibt natürlich.",
      notes:
        "Für Licht rund ums Gesicht, das noch Tiefe hat. Viele Folien: Die erste liegt schon lange, wenn die letzte gelegt wird; darum jede abnehmen, sobald sie fertig ist, oder die erste Schale schwächer mischen.",
      steps: ({ stitch, count, depthMm, gapMm, firstMm, lastMm }) => [
        "Vorderkopf und Seiten vom Hinterkopf abteilen, von Ohr zu Ohr über die Wirbelpartie. Den Hinterkopf wegstecken.",
        `An der Haarlinie beginnen: ${mm(firstMm)} dahinter von neben der Stirnmitte bis unter die Schläfe scheiteln und aus ${mm(depthMm)} ${stitches(stitch)} weben.`,
        "Den Stiel gleichmäßig eintauchen: Wie tief er taucht, entscheidet, wie hell die Reihe wird. Die Folie dicht an den Ansatz legen und beidseitig bestreichen.",
        `Dann ${mm(gapMm)} stehen lassen und wieder parallel scheiteln, bis auf dieser Seite ${rowsLie(count)}; die letzte liegt ${mm(lastMm)} hinter der Haarlinie.`,
        "Jede Folie einmal falten und auf die vorige legen, vom Gesicht weg. Breite Reihen brauchen zwei Folien nebeneinander, die einen Finger breit überlappen.",
        "Die andere Seite in derselben Reihenfolge arbeiten. Neu mischen, bevor die Schale zäh wird.",
        "Die erste Reihe der ersten Seite zuerst kontrollieren, dann alle fünf Minuten.",
      ],
    },
    "crown-halo": {
      name: "Wirbel-Halo",
      aim: "Licht über der Wirbelpartie, unter einem natürlichen Schleier.",
      notes:
        "Für Licht, das sich mit dem Kopf bewegt. Der Schleier darüber macht die Ansatzlinie weicher. Er muss dick genug sein, um bei offenem Haar über die Folien zu fallen.",
      steps: ({ stitch, count, depthMm, veilMm }) => [
        `Einen Schleier von ${mm(veilMm)} über den Oberkopf nach vorn kämmen, von Seite zu Seite vor der Wirbelpartie, und wegstecken: Er bleibt natürlich.`,
        `Dahinter mit dem Stielkamm gerade quer scheiteln, von einer Seite zur anderen, und aus ${mm(depthMm)} ${stitches(stitch)} weben.`,
        "Zwei oder drei Folien nebeneinander verwenden; das Haar senkrecht vom Kopf halten, damit der Ansatz nicht angedrückt wird.",
        count === 1
          ? "Den Schleier über die Folien fallen lassen und sehen, dass nichts durchscheint."
          : `Zur Wirbelpartie hin weiter, bis dort ${rowsLie(count)}, jede parallel zur vorigen gescheitelt. Dann den Schleier darüberfallen lassen und sehen, dass nichts durchscheint.`,
        "Die Wirbelpartie ist warm und bedeckt: hier vor den Seiten kontrollieren.",
      ],
    },
    "nape-peek": {
      name: "Nacken-Peekaboo",
      aim: "Versteckte Slices im Nacken, die sich bei hochgestecktem Haar zeigen.",
      notes:
        "Für eine Überraschung unter dunklem oder halb hochgestecktem Haar. Nackenhaar ist oft dick und langsam: Es kann eine eigene Schale brauchen oder zuerst gelegt werden. Nicht, wo ein Kragen an wunder Haut reibt.",
      steps: ({ count, depthMm, gapMm, firstMm, elevationDeg }) => [
        "Den Kopf nach vorn neigen und alles oberhalb des Hinterhauptknochens wegstecken.",
        `Von der Nackenecke bis neben die Mitte scheiteln, ${mm(firstMm)} innerhalb der Haarlinie, und ${mm(depthMm)} zum Hals hin nehmen.`,
        `Das Haar nach unten und außen halten, ${t.whole(elevationDeg)}° vom Kopf und nicht höher, damit der Ansatz so liegt, wie er wächst. Beidseitig bestreichen.`,
        count === 1
          ? "Das Haar darüberfallen lassen und sehen, ob sich so viel zeigt wie gewünscht."
          : `Dann ${mm(gapMm)} stehen lassen und den nächsten darüber nehmen, bis auf dieser Seite ${t.count(count, { one: "# Slice liegt", other: "# Slices liegen" })}.`,
        "Die andere Seite arbeiten. Produkt vom Hals fernhalten, wo Kragen reiben.",
      ],
    },
  }
}
