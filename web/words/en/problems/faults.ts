import type { HairlineFault } from "../../../../geometry/scalp/hairlineFault"
import type { HeadMeasureName } from "../../../../geometry/scalp/headSize"
import type { DrawingCode, FieldCode, FileCode } from "../../../core/fields/problem"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"
import { documents, fieldNames } from "./fields"

const takeTwinOut = 'take "twin" out to break the pair'

export const hairlineFaults: Record<HairlineFault, string> = {
  "crosses-itself": "the hairline would cross itself: keep each point between its neighbours",
  "over-ear": "the hairline would run over the ear: keep it round the ear",
  "on-face": "no hairline runs below the brows or over the cheek: keep it above them",
  "off-scalp": "that is off the scalp: keep the hairline on the head",
  "across-middle": "the hairline of one side would cross the middle of the head: keep it on its own side",
}

const measures: Record<HeadMeasureName, string> = {
  lengthMm: "head length",
  breadthMm: "head breadth",
  heightMm: "height from ear to top",
  aroundMm: "around the head",
  overMm: "ear to ear over the top",
  frontToNapeMm: "front hairline to nape",
}

/** How fields must go together. */
export const fieldFaults = (t: Tools, faults = t.spelled(hairlineFaults)): Sentences<FieldCode> => ({
  "extra-field": ({ field, document }) =>
    `"${field}" is not a field of a ${documents[document]}: take it out`,
  taken: ({ value, firstPlace }) =>
    `expected one of its own, but ${value} is taken in number ${t.whole(firstPlace)} of the list`,
  "unknown-mix": ({ known, mix }) => `expected one of the mixes listed (${known.join(", ")}), found ${mix}`,
  "twin-of-itself": `expected another section, found itself; ${takeTwinOut}`,
  "twin-unknown": ({ twin }) => `expected a section of this plan, found "${twin}"; ${takeTwinOut}`,
  "twin-of-another": ({ id, twin, named }) =>
    named === null
      ? `expected a section that names "${id}" back, but "${twin}" names none; ${takeTwinOut}`
      : `expected a section that names "${id}" back, but "${twin}" names "${named}"; ${takeTwinOut}`,
  "pair-of-one": ({ pair, found }) =>
    `expected two sections that bear ${pair}, found ${t.whole(found)}; take "pair" out to lay the section by itself`,
  "pair-not-single": 'expected "single": true beside it; take "pair" out to lay the section by itself',
  "nothing-to-coat": ({ startMm, lengthCm }) =>
    `expected a start before the product ends, found ${t.mm(startMm)} from the scalp on hair of ${t.told.cm(lengthCm)}: start nearer, or coat more of the strand`,
  "no-roots": ({ startMm, toMm }) =>
    `expected more than the ${t.mm(startMm)} where product starts, found ${t.mm(toMm)}: let the roots end farther down, or coat all of it in one mix`,
  "roots-first-later": ({ afterMin }) =>
    `expected 0, or the ends first: found ${t.minutes(afterMin)} after the ends with the roots first. Let the ends go on first, or put 0 minutes`,
  "no-ends": ({ toMm, lengthCm }) =>
    `expected an end before the coated hair ends, found ${t.mm(toMm)} from the scalp on hair of ${t.told.cm(lengthCm)}: let the roots end nearer, or coat all of it in one mix`,
  "one-mix-twice": ({ mix }) =>
    `expected another mix than on the rest of the strand, found ${mix} on both: choose another, or coat all of it in one mix`,
  "landmark-off-middle": ({ landmark }) =>
    `expected ${landmark} moved on both sides and only up or down the middle`,
  "landmark-twice": ({ landmark, firstPlace }) =>
    `expected each landmark once a side, but ${landmark} is moved in number ${t.whole(firstPlace)} of the list`,
  hairline: ({ fault, side }) => (side === "left" ? `left: ${faults[fault]}` : `right: ${faults[fault]}`),
  "head-size": ({ measure, mm, least, greatest }) =>
    `${measures[measure]}, ${t.mm(mm, 1)}, does not go with the other two: usual is ${t.number(least)} to ${t.mm(greatest)}`,
})

/** Why a text is no document at all. */
export const fileFaults = (t: Tools, fields = t.spelled(fieldNames)): Sentences<FileCode> => ({
  "too-large": ({ document, mostMb, foundMb }) =>
    `expected a ${documents[document]} of at most ${t.whole(mostMb)} MB, found ${t.whole(foundMb)} MB: is it another file?`,
  empty: ({ document }) => `the file is empty: expected a ${documents[document]} saved by Partline`,
  "not-json": ({ document }) =>
    `the file is cut short or is not a ${documents[document]}: save it again where it was made`,
  "no-number": ({ field, word }) => `${fields[field] ?? field}: expected a number, found ${word}`,
  "another-kind": ({ document, kind }) =>
    `this is not a Partline ${documents[document]}: expected "kind": "${kind}"`,
  version: ({ known }) => `expected a whole number, ${t.whole(known)} at present`,
  "newer-version": ({ version, known }) =>
    `this file is version ${version} and this Partline reads up to ${known}: open it with a newer Partline`,
  "more-like-these": ({ count }) =>
    t.count(count, { one: "and # more problem like these", other: "and # more problems like these" }),
  "damaged-link":
    "this link was cut short or altered on its way: ask for it again, or for the technique as a file",
  "newer-link": "this link comes from a newer Partline: open it with one as new",
  "too-large-link": "this link holds more than any technique needs: ask for the technique as a file",
  "not-on-shelf": "there is no such plan in this browser",
})

/** What makes a line impossible to comb, or to divide the head by. */
export const drawingFaults = (t: Tools): Sentences<DrawingCode> => ({
  "place-outside": "expected a place inside the hairline, found one outside it",
  "line-outside": "expected a line inside the hairline, found one that leaves it",
  "line-too-short": ({ leastMm, foundMm }) =>
    `expected a line at least ${t.mm(leastMm)} long, found ${t.mm(foundMm, 1)}`,
  "line-crosses-itself": "expected a line that does not cross itself",
  "divider-too-short": ({ leastMm, foundMm }) =>
    `expected a line at least ${t.mm(leastMm)} long, found ${t.mm(foundMm, 1)}: draw it again`,
  "divider-crosses-itself": "expected a line that does not cross itself: draw it again",
  "divider-on-another": ({ number }) =>
    `expected a line of its own, found one that lies on section line ${t.whole(number)}: move it or remove it`,
  "divider-divides-nothing":
    "expected a line from edge to edge, found one that divides nothing: draw it on to the hairline or to another section line, or remove it",
  "divider-past-edge": ({ pastMm }) =>
    `expected the line to end on an edge, found it ${t.mm(pastMm)} past the last: end it there, or draw it on to the next`,
  "divider-touches-another":
    "expected a line well apart from the others, found one that touches another: move it or remove it",
  "working-section-too-small": ({ leastCm2, foundCm2 }) =>
    `expected at least ${t.number(leastCm2)} cm² on each side, found ${t.area(foundCm2)}: move it or remove it`,
})
