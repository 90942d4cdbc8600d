import type { Tools } from "../../tools"
import type { HouseWords } from "./houseWords"
import type { stepWords } from "./stepWords"

/** Techniques of the hairline, the top and the nape. */
export const others = (t: Tools, { stitches, mm }: ReturnType<typeof stepWords>) =>
  ({
    "full-hairline": {
      name: "Full hairline",
      aim: "Fine slices all the way round, for hair worn up.",
      notes:
        "For hair that is tied up or tucked behind the ears. The hair behind the ear and at the nape is often coarser and darker and lifts later than the temple. Not over sore skin.",
      steps: ({ depthMm, faceMm, napeMm }) => [
        "Comb the hair the way it is worn up, and see which edge shows.",
        `Begin at the nape, where hair lifts last: part ${mm(napeMm)} inside the hairline from beside the centre to the corner, and take ${mm(depthMm)} towards the edge.`,
        `Go on up behind the ear with a slice of the same depth, ${mm(napeMm)} inside the hairline. Fold the ear forward and cover it.`,
        `Then the front: sideburn to temple, temple to recession, recession to beside the centre, each ${mm(faceMm)} behind the hairline and ${mm(depthMm)} deep.`,
        "Place each foil close to the root and coat both sides. At the sideburn use a short foil, so that its weight does not pull it off.",
        "Keep product off the skin outside the hairline; wipe away at once what gets there.",
        "Do the other side in the same order. Check the temples first: they are usually ready before the nape.",
      ],
    },
    "fringe-panel": {
      name: "Fringe panel",
      aim: "A lighter fringe with a natural edge.",
      notes:
        "For a fringe worn down or parted like a curtain. The edge stays natural, so regrowth is softer. If the fringe is to be cut, cut it first.",
      steps: ({ stitch, count, depthMm, gapMm, babyHairsMm, firstMm, sliceMm, lastMm }) => [
        `Comb out ${mm(babyHairsMm)} of baby hairs along the forehead and clip them away: they stay as they are.`,
        `Part from recession to recession, ${mm(firstMm)} behind the hairline, and weave ${stitches(stitch)} out of the ${mm(depthMm)} in front of it.`,
        "Place the foil under the stitches, close to the root but off the skin of the forehead, and coat from the root area to the ends.",
        `Leave ${mm(gapMm)} and repeat, a little narrower each time, until ${t.count(count, { one: "# weave lies", other: "# weaves lie" })} in the fringe.`,
        `Leave ${mm(gapMm)} and close with one slice of ${mm(sliceMm)}, ${mm(lastMm)} behind the hairline. Its light shows through from behind.`,
        "Lay the foils back over the head, so that none lies against the brow. Check the first one first: hair at the edge is finest.",
      ],
    },
    "grey-blend": {
      name: "Grey blend at the hairline",
      aim: "Fine light among the first grey, so that the grey shows less as it grows.",
      notes:
        "For grey that shows first at the front and the temples. It does not cover grey: it puts light beside it. Grey hair can be coarse and slow to take product up, or soft and quick: check a grey strand and a coloured one by themselves.",
      steps: ({ stitch, count, depthMm, gapMm, firstMm, startMm }) => [
        "Comb the hair back and see where the grey is densest; begin on that side.",
        `Part ${mm(firstMm)} behind the hairline from beside centre front to the recession and weave ${stitches(stitch)} out of ${mm(depthMm)}.`,
        "Pick the stitches through grey and coloured hair alike. Do not chase single grey hairs: that makes a patch.",
        `Go on from the recession to the temple and from the temple to the sideburn at the same distance. Product starts ${mm(startMm)} off the scalp.`,
        count === 1
          ? "One row is all: leave the hair behind it as it is."
          : `Leave ${mm(gapMm)} and repeat behind from beside the centre to the temple, until ${t.count(count, { one: "# row lies", other: "# rows lie" })} there.`,
        "Do the other side from the same landmarks.",
        "Check a grey strand and a coloured strand in the first foil; take off each foil when the slower of the two is ready, within the maker’s time.",
      ],
    },
    "coil-frame": {
      name: "Frame for tight coils",
      aim: "Few wide panels with chunky stitches that still show when the coils spring up.",
      notes:
        "For tightly coiled hair worn in its own pattern. Fine stitches vanish in coils; wide panels read as light. The edge is left out: it breaks first and takes no tension. Coiled hair can be dry and fragile: strand test, no pulling, and check early.",
      steps: ({ stitch, count, depthMm, gapMm, firstMm, edgesMm, startMm }) => [
        "Look at the coils dry and as they are worn, and mark where they fall round the face. Then stretch the hair gently; never comb it out from the root.",
        `Leave ${mm(edgesMm)} of edges out along the hairline and hold them back without tension.`,
        `Part ${mm(firstMm)} behind the hairline from beside centre front to the recession and weave ${stitches(stitch)} out of ${mm(depthMm)}.`,
        `Hold the panel loosely. Start product ${mm(startMm)} off the scalp and work it through each coil to the ends, both sides.`,
        "Fold the foil wide and flat: pressed coils take product unevenly. Then the second panel, from the recession to the temple.",
        count === 1
          ? "Leave the hair behind them as it is."
          : `Leave ${mm(gapMm)} and repeat behind both, until ${t.count(count, { one: "# row lies", other: "# rows lie" })} on this side.`,
        "Do the other side. Check stretch as well as level, and keep the product moist.",
      ],
    },
    "partial-weave": {
      name: "Partial weave",
      aim: "Weaves round the front and sides, the rest left natural.",
      notes:
        "For light all round the face that still has depth. Many foils: the first has long been on when the last is placed, so take each off when it is ready, or mix the first bowl weaker.",
      steps: ({ stitch, count, depthMm, gapMm, firstMm, lastMm }) => [
        "Part off the front and sides from the back, ear to ear over the crown. Clip the back away.",
        `Begin at the hairline: part ${mm(firstMm)} behind it from beside centre front to below the temple, and weave ${stitches(stitch)} out of ${mm(depthMm)}.`,
        "Dip the tail evenly: how deep it dips decides how bright the row is. Place the foil close to the root and coat both sides.",
        `Leave ${mm(gapMm)} and part again, parallel, until ${t.count(count, { one: "# row lies", other: "# rows lie" })} on this side; the last lies ${mm(lastMm)} behind the hairline.`,
        "Fold each foil once and lay it on the one before, away from the face. Wide rows need two foils side by side, overlapping by a finger.",
        "Do the other side in the same order. Mix again before the bowl stiffens.",
        "Check the first row of the first side first, then every five minutes.",
      ],
    },
    "crown-halo": {
      name: "Crown halo",
      aim: "Light across the crown, under a natural veil.",
      notes:
        "For light that moves when the head turns. The veil on top softens the regrowth line. It must be thick enough to fall over the foils when the hair is worn down.",
      steps: ({ stitch, count, depthMm, veilMm }) => [
        `Comb a veil of ${mm(veilMm)} forward across the top, from side to side in front of the crown, and clip it: it stays natural.`,
        `Behind it part straight across with the tail comb, from one side to the other, and weave ${stitches(stitch)} out of ${mm(depthMm)}.`,
        "Use two or three foils side by side; hold the hair straight up from the head so that the roots are not pressed down.",
        count === 1
          ? "Let the veil fall over the foils and see that nothing shows through."
          : `Go on towards the crown until ${t.count(count, { one: "# row lies", other: "# rows lie" })} there, each parted parallel to the one before. Then let the veil fall over them and see that nothing shows through.`,
        "The crown is warm and covered: check here before you check the sides.",
      ],
    },
    "nape-peek": {
      name: "Nape peek",
      aim: "Hidden slices at the nape that show when hair is up.",
      notes:
        "For a surprise under dark hair, or hair worn half up. Nape hair is often coarse and slow: it may need its own bowl, or be placed first. Not where a collar rubs sore skin.",
      steps: ({ count, depthMm, gapMm, firstMm, elevationDeg }) => [
        "Lean the head forward and clip away everything above the occipital bone.",
        `Part ${mm(firstMm)} inside the hairline, from the corner of the nape to beside the centre, and take ${mm(depthMm)} towards the neck.`,
        `Hold the hair down and out, ${t.whole(elevationDeg)}° from the head and no higher, so that the root lies as it will grow. Coat both sides.`,
        count === 1
          ? "Let the hair above fall over it and see whether it shows as much as is wanted."
          : `Leave ${mm(gapMm)} and take the next one above, until ${t.count(count, { one: "# slice lies", other: "# slices lie" })} on this side.`,
        "Do the other side. Keep product off the neck, where collars rub.",
      ],
    },
  }) satisfies Partial<HouseWords>
