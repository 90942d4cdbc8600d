import type { Tools } from "../../tools"
import type { HouseWords } from "./houseWords"
import type { stepWords } from "./stepWords"

/** Techniques that frame the face. */
export const frames = (t: Tools, { stitches, mm }: ReturnType<typeof stepWords>) =>
  ({
    "bright-frame": {
      name: "Bright frame",
      aim: "A light edge round the face that loosens as it goes back.",
      notes:
        "For a frame that shows when the hair is down and tied back. Brightest at the edge puts a slice at the very hairline; softest at the edge weaves it and grows out softer. Fine hair at the temple lifts first: check there first. Leave baby hairs out.",
      steps: ({ isSoft, stitch, gapMm, firstMm, edgeDepthMm, depthMm, wovenMm, driftMm }) => [
        `Comb the baby hairs forward. Part from beside centre front to the recession, ${mm(firstMm)} behind the hairline.`,
        isSoft
          ? `Weave ${stitches("fine")} out of the ${mm(edgeDepthMm)} in front of the parting. Place the foil close to the root and coat both sides.`
          : `Take all of the ${mm(edgeDepthMm)} in front of the parting: you should see light through it. Place the foil close to the root and coat both sides.`,
        "Leave a little hair at the corner of the recession, then do the same from there to the temple. Two short foils lie flatter than one bent round the corner.",
        isSoft
          ? `Leave ${mm(gapMm)}. Part behind both foils, ${mm(driftMm)} farther from the face at the temple than at the front, and take a slice of ${mm(depthMm)}.`
          : `Leave ${mm(gapMm)}. Part behind both foils, ${mm(driftMm)} farther from the face at the temple than at the front, and weave ${stitches(stitch)} out of ${mm(wovenMm)}.`,
        `Leave ${mm(gapMm)} and part once more, dropping farther back. Weave ${stitches(stitch)} out of ${mm(wovenMm)}: this row carries the light into the hair behind.`,
        "Lay every foil back, away from the face, and keep the folds clean so that nothing seeps onto the skin.",
        "Place the other side from the same landmarks. Check the two foils at the temples first.",
      ],
    },
    "off-centre-frame": {
      name: "Off-centre frame",
      aim: "A frame that hangs from a side parting and follows its two lengths.",
      notes:
        "For a parting worn to one side. Look where the hair falls before you part it. The long side carries more foils than the short one, on purpose. Nothing is taken across the parting, so no foil shows as a line in it.",
      steps: ({ isRight, stitch, gapMm, depthMm, wovenMm, firstMm }) => [
        isRight
          ? "Comb the hair to the parting on the client’s right and see how far it falls on each side. Leave a few millimetres on both sides of the parting untouched."
          : "Comb the hair to the parting on the client’s left and see how far it falls on each side. Leave a few millimetres on both sides of the parting untouched.",
        `Begin on the long side: from the parting to the recession take a slice of ${mm(depthMm)}, parted ${mm(firstMm)} behind the hairline.`,
        "Go on from below the recession to the temple with a second slice of the same depth.",
        `Leave ${mm(gapMm)}. Behind each of the two weave ${stitches(stitch)} out of ${mm(wovenMm)}; the one at the temple drifts back.`,
        `On the short side take one slice from the parting to the temple, and leave ${mm(gapMm)}.`,
        `Behind it weave ${stitches(stitch)} out of ${mm(wovenMm)}, drifting back towards the temple.`,
        "Comb the hair down over the foils and look from the front: the parting must be free on both sides.",
      ],
    },
    "unequal-sides": {
      name: "Heavy and light side",
      aim: "More light where the hair is worn to, a single fine slice on the other side.",
      notes:
        "For hair that is thrown over to one side, tucked behind one ear or cut shorter on one side. The difference is meant: show the client both sides in the mirror before you begin. The light side has one foil and is ready early.",
      steps: ({ isLeft, stitch, count, gapMm, depthMm, wovenMm, firstMm }) => [
        isLeft
          ? "The client’s left is the heavy side. Part the hair as it is worn and clip the other side away."
          : "The client’s right is the heavy side. Part the hair as it is worn and clip the other side away.",
        `Take a slice of ${mm(depthMm)} from beside centre front to the temple, parted ${mm(firstMm)} behind the hairline.`,
        `Leave ${mm(gapMm)} and weave ${stitches(stitch)} out of ${mm(wovenMm)} behind it, parallel to the slice.`,
        `${t.count(count, { one: "That is # row", other: "Go on until # rows lie" })} on the heavy side, each with ${mm(gapMm)} to the one before.`,
        `Now the light side: one slice of ${mm(depthMm)} near the recession, and nothing behind it.`,
        "Take the light side off by itself when it is ready; do not wait for the heavy side.",
      ],
    },
    "fan-frame": {
      name: "Fan frame",
      aim: "Rows over the forehead and a fan of partings that opens down each side.",
      notes:
        "For more cover than a frame at the edge, with the back left as it is. The fan starts close behind the recession and opens towards the sideburn, so that the light spreads as the hair falls. The backcombed melt backcombs all but the first foil and blurs farther.",
      steps: ({ isMelted, stitch, count, gapMm, depthMm, wovenMm, foreheadMm, opensMm }) => [
        "Part off the front from ear to ear and clip the back away; it stays as it is.",
        `Over the forehead part ${mm(foreheadMm)} behind the hairline, from recession to recession but not past it, and weave ${stitches(stitch)} out of ${mm(wovenMm)}.`,
        t.count(count, {
          one: "One row is enough. Leave the hair behind it as it is.",
          other: `Go on until # rows lie there, with ${mm(gapMm)} between.`,
        }),
        `At one side, from behind the recession to above the sideburn, take a slice of ${mm(depthMm)} along the hairline: the first rib of the fan.`,
        isMelted
          ? `Each rib behind it starts ${mm(gapMm)} farther back and opens ${mm(opensMm)} more at its lower end. Weave ${stitches(stitch)}, backcomb about half of each stitch towards the root in two to four strokes, and start product past the cushion.`
          : `The next rib starts ${mm(gapMm)} farther back and opens ${mm(opensMm)} at its lower end: weave ${stitches(stitch)} out of ${mm(wovenMm)}. The third opens as much again and is a slice of ${mm(depthMm)}.`,
        "Lay the foils back in a fan, away from the face. Leave hair between the forehead and the first rib: three foils must not meet at the recession.",
        "Do the other side from the same landmarks, rib by rib.",
      ],
    },
    "temple-to-temple": {
      name: "Micro-slices, temple to temple",
      aim: "Very fine slices on each side; you can see light through them.",
      notes:
        "For a first, barely visible brightening. Keep slices at 1–2 mm: deeper ones can read as stripes. Fine slices lift fast, so check early.",
      steps: ({ count, depthMm, gapMm, firstMm }) => [
        `Part from beside centre front to the temple, ${mm(firstMm)} behind the hairline and parallel to it.`,
        `With the end of the tail take ${mm(depthMm)} in front of the parting. Hold it up against the light: you should see through it all along.`,
        "Place a foil close to the root, lay the slice flat and coat it thinly on both sides.",
        `Leave ${mm(gapMm)} of hair over the foil and part again, parallel to the first, until ${t.count(count, { one: "# slice lies", other: "# slices lie" })} on this side.`,
        "Then the other side, counting the same rows from the same landmark.",
        "Check early, after five minutes: slices this thin are ahead of any weave.",
      ],
    },
  }) satisfies Partial<HouseWords>
