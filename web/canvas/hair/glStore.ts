import type { Mesh } from "../../../geometry/portrait/mesh/mesh"
import { pointsEach } from "../../../geometry/strands/grow"
import { strandsARow } from "./shaders"

/** A texture that is read without being smoothed, unless asked for. */
export function newTexture(gl: WebGL2RenderingContext, filter: GLenum): WebGLTexture {
  const made = gl.createTexture()
  gl.bindTexture(gl.TEXTURE_2D, made)
  gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_MIN_FILTER, filter)
  gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_MAG_FILTER, filter)
  gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_WRAP_S, gl.CLAMP_TO_EDGE)
  gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_WRAP_T, gl.CLAMP_TO_EDGE)
  return made
}

/** Puts a value of four parts for each point of each strand into a texture, so many strands a row. */
export function putPoints(
  gl: WebGL2RenderingContext,
  into: WebGLTexture,
  values: Float32Array | Uint8Array,
  parts: 3 | 4,
) {
  const width = strandsARow * pointsEach
  const height = Math.ceil(values.length / parts / width)
  const isFloat = values instanceof Float32Array
  const all = isFloat ? new Float32Array(4 * width * height) : new Uint8Array(4 * width * height)
  if (parts === 4) all.set(values)
  else for (let i = 0, j = 0; i < values.length; i += 3, j += 4) all.set(values.subarray(i, i + 3), j)
  gl.bindTexture(gl.TEXTURE_2D, into)
  if (isFloat) gl.texImage2D(gl.TEXTURE_2D, 0, gl.RGBA32F, width, height, 0, gl.RGBA, gl.FLOAT, all)
  else gl.texImage2D(gl.TEXTURE_2D, 0, gl.RGBA8, width, height, 0, gl.RGBA, gl.UNSIGNED_BYTE, all)
}

/** A mesh on the device, scaled by `axes` when it is drawn. */
export type Solid = { array: WebGLVertexArrayObject; corners: number }

export function newSolid(gl: WebGL2RenderingContext, { points, normals, triangles }: Mesh): Solid {
  const array = gl.createVertexArray()
  gl.bindVertexArray(array)
  for (const [place, values] of [points, normals].entries()) {
    gl.bindBuffer(gl.ARRAY_BUFFER, gl.createBuffer())
    gl.bufferData(gl.ARRAY_BUFFER, new Float32Array(values), gl.STATIC_DRAW)
    gl.enableVertexAttribArray(place)
    gl.vertexAttribPointer(place, 3, gl.FLOAT, false, 0, 0)
  }
  gl.bindBuffer(gl.ELEMENT_ARRAY_BUFFER, gl.createBuffer())
  gl.bufferData(gl.ELEMENT_ARRAY_BUFFER, triangles, gl.STATIC_DRAW)
  gl.bindVertexArray(null)
  return { array, corners: triangles.length }
}
