import type { frames as english } from "../../en/techniques/frames"

/** Techniques that frame the face. */
export const frames: typeof english = (t, { stitches, mm }) => ({
  "bright-frame": {
    name: "Heller Rahmen",
    aim: "Ein heller Rand ums Gesicht, der nach hinten lockerer wird.",
    notes:
      "Für einen Rahmen, der sich bei offenem und bei zurückgebundenem Haar zeigt. „Am Rand am hellsten“ legt einen Slice direkt an die Haarlinie; „Am Rand am weichsten“ webt sie und wächst weicher heraus. Feines Haar an der Schläfe hellt zuerst auf: dort zuerst kontrollieren. Babyhaare auslassen.",
    steps: ({ isSoft, stitch, gapMm, firstMm, edgeDepthMm, depthMm, wovenMm, driftMm }) => [
      `Die Babyhaare nach vorn kämmen. Von neben der Stirnmitte bis zur Stirnecke scheiteln, ${mm(firstMm)} hinter der Haarlinie.`,
      isSoft
        ? `Aus den ${mm(edgeDepthMm)} vor dem Scheitel ${stitches("fine")} weben. Die Folie dicht an den Ansatz legen und beidseitig bestreichen.`
        : `Die ganzen ${mm(edgeDepthMm)} vor dem Scheitel nehmen: Licht soll durchscheinen. Die Folie dicht an den Ansatz legen und beidseitig bestreichen.`,
      "An der Spitze der Stirnecke ein wenig Haar stehen lassen, dann ebenso von dort bis zur Schläfe. Zwei kurze Folien liegen flacher als eine um die Ecke gebogene.",
      isSoft
        ? `Dann ${mm(gapMm)} stehen lassen. Hinter beiden Folien scheiteln, an der Schläfe ${mm(driftMm)} weiter vom Gesicht als vorn, und einen Slice von ${mm(depthMm)} nehmen.`
        : `Dann ${mm(gapMm)} stehen lassen. Hinter beiden Folien scheiteln, an der Schläfe ${mm(driftMm)} weiter vom Gesicht als vorn, und aus ${mm(wovenMm)} ${stitches(stitch)} weben.`,
      `Dann ${mm(gapMm)} stehen lassen und noch einmal scheiteln, weiter nach hinten abfallend. Aus ${mm(wovenMm)} ${stitches(stitch)} weben: Diese Reihe trägt das Licht ins Haar dahinter.`,
      "Jede Folie nach hinten legen, vom Gesicht weg, und die Falze sauber halten, damit nichts auf die Haut läuft.",
      "Die andere Seite von denselben Punkten aus legen. Die beiden Folien an den Schläfen zuerst kontrollieren.",
    ],
  },
  "off-centre-frame": {
    name: "Seitlicher Rahmen",
    aim: "Ein Rahmen, der von einem Seitenscheitel fällt und seinen zwei Längen folgt.",
    notes:
      "Für einen seitlich getragenen Scheitel. Vor dem Scheiteln sehen, wohin das Haar fällt. Die lange Seite trägt absichtlich mehr Folien als die kurze. Über den Scheitel hinweg wird nichts genommen, so zeigt sich keine Folie als Linie darin.",
    steps: ({ isRight, stitch, gapMm, depthMm, wovenMm, firstMm }) => [
      isRight
        ? "Das Haar zum Scheitel beim Gast rechts kämmen und sehen, wie weit es auf jeder Seite fällt. Auf beiden Seiten des Scheitels einige Millimeter unberührt lassen."
        : "Das Haar zum Scheitel beim Gast links kämmen und sehen, wie weit es auf jeder Seite fällt. Auf beiden Seiten des Scheitels einige Millimeter unberührt lassen.",
      `Auf der langen Seite beginnen: vom Scheitel bis zur Stirnecke einen Slice von ${mm(depthMm)} nehmen, ${mm(firstMm)} hinter der Haarlinie gescheitelt.`,
      "Von unterhalb der Stirnecke bis zur Schläfe mit einem zweiten Slice gleicher Tiefe weiter.",
      `Dann ${mm(gapMm)} stehen lassen. Hinter jedem der beiden aus ${mm(wovenMm)} ${stitches(stitch)} weben; die Reihe an der Schläfe läuft nach hinten.`,
      `Auf der kurzen Seite einen Slice vom Scheitel bis zur Schläfe nehmen und ${mm(gapMm)} stehen lassen.`,
      `Dahinter aus ${mm(wovenMm)} ${stitches(stitch)} weben, zur Schläfe hin nach hinten laufend.`,
      "Das Haar über die Folien kämmen und von vorn ansehen: Der Scheitel muss auf beiden Seiten frei sein.",
    ],
  },
  "unequal-sides": {
    name: "Volle und leichte Seite",
    aim: "Mehr Licht, wohin das Haar getragen wird, ein einzelner feiner Slice auf der anderen Seite.",
    notes:
      "Für Haar, das auf eine Seite geworfen, hinter ein Ohr gesteckt oder auf einer Seite kürzer geschnitten ist. Der Unterschied ist gewollt: dem Gast vorher beide Seiten im Spiegel zeigen. Die leichte Seite hat eine Folie und ist früh fertig.",
    steps: ({ isLeft, stitch, count, gapMm, depthMm, wovenMm, firstMm }) => [
      isLeft
        ? "Beim Gast links ist die volle Seite. Das Haar scheiteln, wie es getragen wird, und die andere Seite wegstecken."
        : "Beim Gast rechts ist die volle Seite. Das Haar scheiteln, wie es getragen wird, und die andere Seite wegstecken.",
      `Einen Slice von ${mm(depthMm)} von neben der Stirnmitte bis zur Schläfe nehmen, ${mm(firstMm)} hinter der Haarlinie gescheitelt.`,
      `Dann ${mm(gapMm)} stehen lassen und dahinter, parallel zum Slice, aus ${mm(wovenMm)} ${stitches(stitch)} weben.`,
      t.count(count, {
        one: `Das ist # Reihe auf der vollen Seite, mit ${mm(gapMm)} Abstand zur vorigen.`,
        other: `So weiter, bis auf der vollen Seite # Reihen liegen, jede mit ${mm(gapMm)} Abstand zur vorigen.`,
      }),
      `Nun die leichte Seite: ein Slice von ${mm(depthMm)} nahe der Stirnecke und nichts dahinter.`,
      "Die leichte Seite für sich abnehmen, wenn sie fertig ist; nicht auf die volle Seite warten.",
    ],
  },
  "fan-frame": {
    name: "Fächerrahmen",
    aim: "Reihen über der Stirn und ein Fächer von Scheiteln, der sich auf jeder Seite nach unten öffnet.",
    notes:
      "Für mehr Fläche als ein Rahmen am Rand; der Hinterkopf bleibt, wie er ist. Der Fächer beginnt dicht hinter der Stirnecke und öffnet sich zur Kotelette, so verteilt sich das Licht, wie das Haar fällt. „Toupierter Verlauf“ toupiert alle außer der ersten Folie und verwischt weiter.",
    steps: ({ isMelted, stitch, count, gapMm, depthMm, wovenMm, foreheadMm, opensMm }) => [
      "Den Vorderkopf von Ohr zu Ohr abteilen und den Hinterkopf wegstecken; er bleibt, wie er ist.",
      `Über der Stirn ${mm(foreheadMm)} hinter der Haarlinie scheiteln, von Stirnecke zu Stirnecke, aber nicht darüber hinaus, und aus ${mm(wovenMm)} ${stitches(stitch)} weben.`,
      t.count(count, {
        one: "Eine Reihe genügt. Das Haar dahinter so lassen, wie es ist.",
        other: `So weiter, bis dort # Reihen liegen, mit ${mm(gapMm)} dazwischen.`,
      }),
      `Auf einer Seite von hinter der Stirnecke bis oberhalb der Kotelette einen Slice von ${mm(depthMm)} entlang der Haarlinie nehmen: die erste Rippe des Fächers.`,
      isMelted
        ? `Jede Rippe dahinter beginnt ${mm(gapMm)} weiter hinten und öffnet sich am unteren Ende um ${mm(opensMm)} mehr. ${t.capital(stitches(stitch))} weben, von jedem Stich etwa die Hälfte in zwei bis vier Strichen zum Ansatz toupieren und das Produkt hinter dem Polster beginnen.`
        : `Die nächste Rippe beginnt ${mm(gapMm)} weiter hinten und öffnet sich am unteren Ende um ${mm(opensMm)}: aus ${mm(wovenMm)} ${stitches(stitch)} weben. Die dritte öffnet sich noch einmal so weit und ist ein Slice von ${mm(depthMm)}.`,
      "Die Folien als Fächer nach hinten legen, vom Gesicht weg. Zwischen Stirn und erster Rippe Haar stehen lassen: An der Stirnecke dürfen nicht drei Folien zusammentreffen.",
      "Die andere Seite von denselben Punkten aus arbeiten, Rippe für Rippe.",
    ],
  },
  "temple-to-temple": {
    name: "Mikro-Slices, Schläfe zu Schläfe",
    aim: "Sehr feine Slices auf jeder Seite, durch die Licht scheint.",
    notes:
      "Für eine erste, kaum sichtbare Aufhellung. Slices bei 1–2 mm halten: Tiefere können als Streifen wirken. Feine Slices hellen schnell auf, also früh kontrollieren.",
    steps: ({ count, depthMm, gapMm, firstMm }) => [
      `Von neben der Stirnmitte bis zur Schläfe scheiteln, ${mm(firstMm)} hinter der Haarlinie und parallel dazu.`,
      `Mit der Stielspitze ${mm(depthMm)} vor dem Scheitel nehmen. Gegen das Licht halten: Es soll überall durchscheinen.`,
      "Eine Folie dicht an den Ansatz legen, den Slice flach auflegen und beidseitig dünn bestreichen.",
      `Dann ${mm(gapMm)} Haar über der Folie stehen lassen und parallel zum ersten wieder scheiteln, bis auf dieser Seite ${t.count(count, { one: "# Slice liegt", other: "# Slices liegen" })}.`,
      "Dann die andere Seite, mit ebenso vielen Reihen vom selben Punkt aus.",
      "Früh kontrollieren, nach fünf Minuten: So dünne Slices sind jedem Weaving voraus.",
    ],
  },
})
