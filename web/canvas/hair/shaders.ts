/** Rows of the textures that hold the strands: so many strands side by side. */
export const strandsARow = 32

/**
 * Strands as ribbons that face the viewer, one instance a strand, two corners a point. Each strand that was grown is
 * drawn as several that lie about it.
 */
export const strandVertex = `#version 300 es
precision highp float;
precision highp sampler2D;
uniform sampler2D places;
uniform sampler2D colours;
uniform mat3 view;
uniform vec2 centre;
uniform vec2 scale;
uniform float depthScale;
uniform float pixelMm;
uniform float widthMm;
uniform float spreadMm;
uniform int each;
uniform int pointsEach;
out vec3 tangent;
out vec3 outward;
out vec4 colour;
out float across;
out float halfPx;
out float along;
out float lot;

float draw(float seed) { return fract(sin(seed * 12.9898) * 43758.5453); }

vec3 placeOf(int strand, int k) {
  return texelFetch(places, ivec2((strand % ${strandsARow}) * pointsEach + k, strand / ${strandsARow}), 0).xyz;
}

void main() {
  int strand = gl_InstanceID / each;
  int child = gl_InstanceID % each;
  int k = gl_VertexID >> 1;
  float side = float(gl_VertexID & 1) * 2.0 - 1.0;
  int last = pointsEach - 1;
  vec3 at = placeOf(strand, k);
  vec3 before = placeOf(strand, max(k - 1, 0));
  vec3 after = placeOf(strand, min(k + 1, last));
  float seed = float(strand) * 7.0 + float(child) + 1.0;
  lot = draw(seed);
  along = float(k) / float(last);
  float reach = spreadMm * (child == 0 ? 0.0 : 1.0) * sqrt(draw(seed + 0.3)) * (0.45 + 0.75 * along);
  float turn = 6.2832 * draw(seed + 0.7) + 2.0 * along;
  vec3 out0 = normalize(vec3(at.x, at.y + 12.0, max(0.0, at.z - 30.0) + 1.0));
  vec3 run = normalize(after - before);
  vec3 sideways = normalize(cross(run, out0));
  at += reach * (cos(turn) * sideways + 0.6 * sin(turn) * out0);
  tangent = view * run;
  outward = view * out0;
  vec3 seen = view * at;
  vec2 way = normalize(tangent.xy + vec2(1e-5, 0.0));
  float taper = (0.55 + 0.45 * smoothstep(0.0, 0.05, along)) * (1.0 - 0.55 * smoothstep(0.55, 1.0, along));
  float px = max(widthMm * taper / pixelMm, 1.0);
  halfPx = 0.5 * px;
  float edgePx = halfPx + 0.6;
  across = side * edgePx;
  seen.xy += vec2(-way.y, way.x) * side * edgePx * pixelMm;
  colour = texelFetch(colours, ivec2((strand % ${strandsARow}) * pointsEach + k, strand / ${strandsARow}), 0);
  gl_Position = vec4((seen.xy - centre) * scale, -seen.z * depthScale, 1.0);
}`

/**
 * A diffuse rest and two highlights along the strand: one white, moved toward the root, and one in the colour of the hair,
 * moved toward the tip (Scheuermann 2004, "Practical real-time hair rendering and shading", after Kajiya and Kay 1989
 * and Marschner and others 2003).
 */
export const strandFragment = `#version 300 es
precision highp float;
uniform vec3 lamp;
uniform float tipFrom;
in vec3 tangent;
in vec3 outward;
in vec4 colour;
in float across;
in float halfPx;
in float along;
in float lot;
out vec4 shown;

float shine(vec3 way, vec3 half0, float sharp) {
  float cosine = dot(way, half0);
  float sine = sqrt(max(0.0, 1.0 - cosine * cosine));
  return smoothstep(-1.0, 0.0, cosine) * pow(sine, sharp);
}

void main() {
  float cover = clamp(halfPx + 0.5 - abs(across), 0.0, 1.0);
  float ends = tipFrom + (1.0 - tipFrom) * lot;
  cover *= 1.0 - smoothstep(ends - 0.05, ends, along);
  if (cover < 0.06) discard;
  vec3 way = normalize(tangent);
  vec3 face = normalize(outward);
  vec3 base = pow(colour.rgb, vec3(2.2));
  float open = colour.a;
  vec3 half0 = normalize(lamp + vec3(0.0, 0.0, 1.0));
  float shift = (lot - 0.5) * 0.14;
  float white = shine(normalize(way - (0.10 + shift) * face), half0, 90.0);
  float warm = shine(normalize(way + (0.16 + shift) * face), half0, 22.0);
  float facing = dot(face, lamp);
  float sine = sqrt(max(0.0, 1.0 - pow(dot(way, lamp), 2.0)));
  float light = (0.46 + 0.46 * open) * (0.68 + 0.32 * facing) + 0.32 * open * sine * max(0.0, facing);
  light *= 0.9 + 0.2 * lot;
  float lit = open * smoothstep(-0.15, 0.5, facing);
  vec3 sum = base * light + lit * (0.65 * warm * base + white * (0.045 + 0.16 * base));
  vec3 over = max(sum - 0.6, 0.0);
  sum = min(sum, 0.6) + 0.36 * (1.0 - exp(-over / 0.36));
  shown = vec4(pow(sum, vec3(1.0 / 2.2)), cover);
}`

export const bodyVertex = `#version 300 es
precision highp float;
in vec3 place;
in vec3 normal;
uniform mat3 view;
uniform vec3 axes;
uniform vec2 centre;
uniform vec2 scale;
uniform float depthScale;
out vec3 facing;
out float height;
void main() {
  vec3 seen = view * (place * axes);
  facing = view * (normal / axes);
  height = place.z;
  gl_Position = vec4((seen.xy - centre) * scale, -seen.z * depthScale, 1.0);
}`

/** Paper, darker where it turns away; it comes out of the drawn neck and goes over into the page below. */
export const bodyFragment = `#version 300 es
precision highp float;
uniform vec3 paper;
uniform vec3 shade;
uniform vec3 lamp;
uniform vec2 fade;
in vec3 facing;
in float height;
out vec4 shown;
void main() {
  vec3 out0 = normalize(facing);
  float away = 1.0 - max(0.0, out0.z);
  float dark = 0.10 + 0.16 * (0.5 - 0.5 * dot(out0, lamp)) + 0.42 * pow(away, 3.0);
  float cover = smoothstep(fade.x, fade.x - 28.0, height) * smoothstep(fade.y - 60.0, fade.y, height);
  if (cover < 0.02) discard;
  shown = vec4(mix(paper, shade, dark), cover);
}`

export const pageVertex = `#version 300 es
out vec2 at;
void main() {
  vec2 corner = vec2(float(gl_VertexID & 1), float(gl_VertexID >> 1));
  at = vec2(corner.x, 1.0 - corner.y);
  gl_Position = vec4(corner * 2.0 - 1.0, 0.999, 1.0);
}`

export const pageFragment = `#version 300 es
precision mediump float;
uniform sampler2D page;
in vec2 at;
out vec4 shown;
void main() { shown = texture(page, at); }`
