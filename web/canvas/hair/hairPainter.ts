import { bustMesh } from "../../../geometry/portrait/mesh/bustMesh"
import { bodyParts } from "../../../geometry/portrait/mesh/headMesh"
import { pointsEach, type Strands } from "../../../geometry/strands/grow"
import type { Vec3 } from "../../../geometry/surface/vec3"
import type { OrthographicView } from "../../../geometry/surface/views"
import { paper, shadeRgb } from "../../drawing/inks"
import type { Camera } from "../paint/camera"
import { type GlProgram, glProgram } from "./glProgram"
import { newSolid, newTexture, putPoints, type Solid } from "./glStore"
import { bodyFragment, bodyVertex, pageFragment, pageVertex, strandFragment, strandVertex } from "./shaders"

export type Painted = { strands: Pick<Strands, "count" | "points">; colours: Uint8Array }

/** One look at the hair: from where, on what page, how finely, and the drawing of the head that lies behind it. */
export type Look = {
  view: OrthographicView
  camera: Camera
  axes: Vec3
  pxRatio: number
  page: HTMLCanvasElement
  /** Strands drawn for each that was grown. */
  each: number
}

export type HairPainter = {
  canvas: HTMLCanvasElement
  /** False once the device has taken its graphics back: hair is then drawn without. */
  works(): boolean
  paint(hair: Painted, look: Look): void
}

/** Where the light is, as the viewer has it: a little to the right, above and on the viewer's side. */
const lamp: Vec3 = [0.3, 0.52, 0.8]
/** A strand stands for some hairs and is as broad as they lie side by side; those drawn for one lie within so much of it, mm. */
const strandMm = 0.5
const lockMm = 2.1
const tipFrom = 0.88
/** Depths that fit, mm either way of the middle of the head. */
const depthMm = 600
const [bustFadesMm, bustEndsMm] = [-118, -400]
/** Hair lies on the head: its body is drawn so much smaller than the head is, mm, so that no root is hidden. */
const sunkMm = 3

/**
 * Draws strands by the device's graphics (WebGL 2); null where it has none to give, or where its processor would have to
 * stand in for them and keep everybody waiting.
 */
export function makeHairPainter(canvas = document.createElement("canvas")): HairPainter | null {
  const gl = canvas.getContext("webgl2", {
    antialias: true,
    alpha: false,
    preserveDrawingBuffer: true,
    failIfMajorPerformanceCaveat: true,
  })
  if (!gl || isDrawnByProcessor(gl)) return null
  const programs = {
    page: glProgram(gl, pageVertex, pageFragment),
    body: glProgram(gl, bodyVertex, bodyFragment),
    strand: glProgram(gl, strandVertex, strandFragment),
  }
  const page = newTexture(gl, gl.LINEAR)
  const places = newTexture(gl, gl.NEAREST)
  const colours = newTexture(gl, gl.NEAREST)
  const corners = gl.createVertexArray()
  const [head, bust] = [newSolid(gl, bodyParts()[0].mesh), newSolid(gl, bustMesh())]
  let on: Painted | null = null

  function put({ strands, colours: bytes }: Painted) {
    if (!gl) return
    if (strands.points !== on?.strands.points) putPoints(gl, places, strands.points, 3)
    if (bytes !== on?.colours) putPoints(gl, colours, bytes, 4)
    on = { strands, colours: bytes }
  }

  return {
    canvas,
    works: () => !gl.isContextLost(),
    paint(hair, look) {
      put(hair)
      clear(gl, look)
      paintPage(gl, programs.page, { page, corners, drawing: look.page })
      paintBody(gl, programs.body, look, { head, bust })
      const drawn = { places, colours, corners, count: hair.strands.count }
      paintStrands(gl, programs.strand, look, drawn)
    },
  }
}

function isDrawnByProcessor(gl: WebGL2RenderingContext) {
  const named = gl.getExtension("WEBGL_debug_renderer_info")
  return (
    named !== null && /swiftshader|llvmpipe|software/i.test(gl.getParameter(named.UNMASKED_RENDERER_WEBGL))
  )
}

function clear(gl: WebGL2RenderingContext, { camera, pxRatio }: Look) {
  const { canvas } = gl
  const [width, height] = [camera.width, camera.height].map((px) => Math.max(1, Math.round(px * pxRatio)))
  if (canvas.width !== width) canvas.width = width
  if (canvas.height !== height) canvas.height = height
  gl.viewport(0, 0, width, height)
  gl.enable(gl.DEPTH_TEST)
  gl.depthFunc(gl.LEQUAL)
  gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT)
}

type PageDrawn = { page: WebGLTexture; corners: WebGLVertexArrayObject; drawing: HTMLCanvasElement }

/** The drawing of the head, behind all. */
function paintPage(
  gl: WebGL2RenderingContext,
  { take, at }: GlProgram,
  { page, corners, drawing }: PageDrawn,
) {
  take()
  gl.activeTexture(gl.TEXTURE0)
  gl.bindTexture(gl.TEXTURE_2D, page)
  gl.texImage2D(gl.TEXTURE_2D, 0, gl.RGBA, gl.RGBA, gl.UNSIGNED_BYTE, drawing)
  gl.uniform1i(at("page"), 0)
  gl.bindVertexArray(corners)
  gl.drawArrays(gl.TRIANGLE_STRIP, 0, 4)
}

/** The shoulders in their shade; the head only hides what is behind it, for it is drawn already. */
function paintBody(
  gl: WebGL2RenderingContext,
  { take, at }: GlProgram,
  look: Look,
  { head, bust }: { head: Solid; bust: Solid },
) {
  take()
  aim(gl, at, look)
  gl.uniform3fv(at("paper"), paperShare)
  gl.uniform3fv(
    at("shade"),
    shadeRgb.map((byte) => byte / 255),
  )
  gl.uniform3fv(at("lamp"), unit(lamp))
  const solid = ({ array, corners }: Solid, axes: Vec3) => {
    gl.uniform3fv(at("axes"), axes)
    gl.bindVertexArray(array)
    gl.drawElements(gl.TRIANGLES, corners, gl.UNSIGNED_INT, 0)
  }
  gl.colorMask(false, false, false, false)
  gl.uniform2f(at("fade"), depthMm, -depthMm)
  solid(head, look.axes.map((axis) => axis * (1 - sunkMm / 80)) as [number, number, number])
  gl.colorMask(true, true, true, true)
  gl.uniform2f(at("fade"), bustFadesMm, bustEndsMm)
  gl.enable(gl.BLEND)
  gl.blendFunc(gl.SRC_ALPHA, gl.ONE_MINUS_SRC_ALPHA)
  solid(bust, look.axes)
  gl.disable(gl.BLEND)
}

type StrandsDrawn = {
  places: WebGLTexture
  colours: WebGLTexture
  corners: WebGLVertexArrayObject
  count: number
}

function paintStrands(
  gl: WebGL2RenderingContext,
  { take, at }: GlProgram,
  look: Look,
  { places, colours, corners, count }: StrandsDrawn,
) {
  take()
  aim(gl, at, look)
  gl.uniform3fv(at("lamp"), unit(lamp))
  gl.uniform1f(at("pixelMm"), 1 / (look.camera.pxPerMm * look.pxRatio))
  gl.uniform1f(at("widthMm"), strandMm * (look.each > 1 ? 1 : 2))
  gl.uniform1f(at("spreadMm"), lockMm)
  gl.uniform1f(at("tipFrom"), tipFrom)
  gl.uniform1i(at("each"), look.each)
  gl.uniform1i(at("pointsEach"), pointsEach)
  for (const [place, name] of (["places", "colours"] as const).entries()) {
    gl.activeTexture(place === 0 ? gl.TEXTURE0 : gl.TEXTURE1)
    gl.bindTexture(gl.TEXTURE_2D, name === "places" ? places : colours)
    gl.uniform1i(at(name), place)
  }
  gl.activeTexture(gl.TEXTURE0)
  gl.bindVertexArray(corners)
  // Edges are soft by how many of a pixel's samples a strand covers, so that no strand has to be sorted.
  gl.enable(gl.SAMPLE_ALPHA_TO_COVERAGE)
  gl.colorMask(true, true, true, false)
  gl.drawArraysInstanced(gl.TRIANGLE_STRIP, 0, 2 * pointsEach, count * look.each)
  gl.colorMask(true, true, true, true)
  gl.disable(gl.SAMPLE_ALPHA_TO_COVERAGE)
}

/** The page of a view, mm, laid on the canvas as the camera has it. */
function aim(gl: WebGL2RenderingContext, at: GlProgram["at"], { view, camera }: Look) {
  const { right, up, toward } = view
  const { centre, pxPerMm, width, height } = camera
  gl.uniformMatrix3fv(
    at("view"),
    false,
    [0, 1, 2].flatMap((axis) => [right[axis], up[axis], toward[axis]]),
  )
  gl.uniform2f(at("centre"), centre[0], centre[1])
  gl.uniform2f(at("scale"), (2 * pxPerMm) / width, (2 * pxPerMm) / height)
  gl.uniform1f(at("depthScale"), 1 / depthMm)
}

const unit = (way: Vec3) => {
  const size = Math.hypot(...way)
  return way.map((part) => part / size)
}

const paperShare = [1, 3, 5].map((from) => Number.parseInt(paper.slice(from, from + 2), 16) / 255)
