/** A program of two shaders: takes it up for what is drawn next, and says where its inputs are. */
export type GlProgram = { take(): void; at(name: string): WebGLUniformLocation | null }

export function glProgram(gl: WebGL2RenderingContext, vertex: string, fragment: string): GlProgram {
  const program = gl.createProgram()
  gl.attachShader(program, shaderOf(gl, gl.VERTEX_SHADER, vertex))
  gl.attachShader(program, shaderOf(gl, gl.FRAGMENT_SHADER, fragment))
  gl.bindAttribLocation(program, 0, "place")
  gl.bindAttribLocation(program, 1, "normal")
  gl.linkProgram(program)
  if (!gl.getProgramParameter(program, gl.LINK_STATUS) && !gl.isContextLost())
    throw new Error(`The hair program does not link: ${gl.getProgramInfoLog(program)}`)
  const known = new Map<string, WebGLUniformLocation | null>()
  return {
    take: () => gl.useProgram(program),
    at(name) {
      if (!known.has(name)) known.set(name, gl.getUniformLocation(program, name))
      return known.get(name) ?? null
    },
  }
}

function shaderOf(gl: WebGL2RenderingContext, kind: GLenum, source: string): WebGLShader {
  const shader = gl.createShader(kind)
  if (!shader) throw new Error("The page has lost its graphics.")
  gl.shaderSource(shader, source)
  gl.compileShader(shader)
  return shader
}
