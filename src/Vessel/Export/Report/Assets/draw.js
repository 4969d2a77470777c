// Draws in WebGL 2: facets with a cut plane, lines of any width. Knows nothing of the page.
const FACETS = {
  vertex: `#version 300 es
    in vec3 position, normal;
    uniform mat4 place, view;
    out vec3 world, turned;
    void main() {
      vec4 at = place * vec4(position, 1);
      world = at.xyz;
      turned = mat3(place) * normal;
      gl_Position = view * at;
    }`,
  fragment: `#version 300 es
    precision highp float;
    in vec3 world, turned;
    uniform vec4 plane;       // kept where dot(world, xyz) <= w
    uniform vec3 eye, tint;
    uniform float hatch, glow;
    out vec4 colour;
    void main() {
      if (dot(world, plane.xyz) > plane.w) discard;
      vec3 n = normalize(turned);
      vec3 shade = tint;
      if (!gl_FrontFacing) {
        // Nearest of all, it shows that the sight has entered metal through the plane: what is seen is the cut face.
        float stripe = mod(gl_FragCoord.x + hatch * gl_FragCoord.y, 14.0);
        shade *= stripe < 4.0 ? 0.5 : 0.95;
      } else {
        vec3 side = normalize(vec3(-eye.y, eye.x, 0.0001)), up = cross(eye, side);
        float key = max(dot(n, normalize(0.66 * eye - 0.45 * side + 0.6 * up)), 0.0);
        float fill = max(dot(n, normalize(0.6 * eye + 0.8 * side)), 0.0);
        shade *= 0.5 + 0.5 * key + 0.15 * fill;
      }
      colour = vec4(mix(shade, vec3(1.0, 0.62, 0.2), glow * 0.55), 1);
    }`,
};
const LINES = {
  vertex: `#version 300 es
    in vec3 a, b;
    uniform mat4 place, view;
    uniform vec2 pixel;
    uniform float width, lift;
    out vec3 world;
    void main() {
      bool far = gl_VertexID > 1;
      vec4 p = place * vec4(a, 1), q = place * vec4(b, 1);
      world = (far ? q : p).xyz;
      p = view * p;
      q = view * q;
      vec2 along = (q.xy - p.xy) / pixel;
      along = length(along) > 0.001 ? normalize(along) : vec2(1, 0);
      vec2 aside = vec2(-along.y, along.x) * (gl_VertexID % 2 == 0 ? -1.0 : 1.0);
      vec4 end = far ? q : p;
      gl_Position = vec4(end.xy + (aside + along * (far ? 0.5 : -0.5)) * width / 2.0 * pixel, end.z - lift, 1);
    }`,
  fragment: `#version 300 es
    precision highp float;
    in vec3 world;
    uniform vec4 plane, ink;
    out vec4 colour;
    void main() {
      if (dot(world, plane.xyz) > plane.w + 0.01) discard;
      colour = ink;
    }`,
};

const drawing = canvas => {
  // The last picture is kept, so that it can be copied and saved.
  const gl = canvas.getContext("webgl2", { antialias: true, stencil: true, preserveDrawingBuffer: true });
  if (!gl) return null;

  const program = ({ vertex, fragment }) => {
    const whole = gl.createProgram();
    for (const [kind, text] of [[gl.VERTEX_SHADER, vertex], [gl.FRAGMENT_SHADER, fragment]]) {
      const shader = gl.createShader(kind);
      gl.shaderSource(shader, text);
      gl.compileShader(shader);
      gl.attachShader(whole, shader);
    }
    gl.linkProgram(whole);
    if (!gl.getProgramParameter(whole, gl.LINK_STATUS)) throw new Error(gl.getProgramInfoLog(whole));
    const places = {};
    for (let i = 0; i < gl.getProgramParameter(whole, gl.ACTIVE_UNIFORMS); i++) {
      const { name } = gl.getActiveUniform(whole, i);
      places[name] = gl.getUniformLocation(whole, name);
    }
    return { whole, places };
  };
  const facets = program(FACETS), lines = program(LINES);

  const buffer = data => {
    const made = gl.createBuffer();
    gl.bindBuffer(gl.ARRAY_BUFFER, made);
    gl.bufferData(gl.ARRAY_BUFFER, data, gl.STATIC_DRAW);
    return made;
  };
  const attribute = (use, name, from, stride, offset, each) => {
    const place = gl.getAttribLocation(use.whole, name);
    gl.bindBuffer(gl.ARRAY_BUFFER, from);
    gl.enableVertexAttribArray(place);
    gl.vertexAttribPointer(place, 3, gl.FLOAT, false, stride, offset);
    gl.vertexAttribDivisor(place, each);
  };
  const array = fill => {
    const made = gl.createVertexArray();
    gl.bindVertexArray(made);
    fill();
    gl.bindVertexArray(null);
    return made;
  };

  return {
    facets: ({ positions, normals }) => {
      const [p, n] = [buffer(positions), buffer(normals)];
      const made = array(() => {
        attribute(facets, "position", p, 12, 0, 0);
        attribute(facets, "normal", n, 12, 0, 0);
      });
      return { made, count: positions.length / 3 };
    },
    lines: ends => {
      const from = buffer(ends);
      const made = array(() => {
        attribute(lines, "a", from, 24, 0, 1);
        attribute(lines, "b", from, 24, 12, 1);
      });
      return { made, count: ends.length / 6 };
    },
    clear: () => {
      gl.viewport(0, 0, canvas.width, canvas.height);
      gl.clearColor(0, 0, 0, 0);
      gl.enable(gl.DEPTH_TEST);
      gl.enable(gl.STENCIL_TEST);
      // Marks where the nearest facet is seen from within: no crease behind a cut face is drawn over it.
      gl.stencilOpSeparate(gl.FRONT, gl.KEEP, gl.KEEP, gl.ZERO);
      gl.stencilOpSeparate(gl.BACK, gl.KEEP, gl.KEEP, gl.REPLACE);
      gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT | gl.STENCIL_BUFFER_BIT);
    },
    drawFacets: (what, { place, view, plane, eye }, { tint, hatch, glow }) => {
      gl.useProgram(facets.whole);
      gl.stencilFunc(gl.ALWAYS, 1, 255);
      gl.uniformMatrix4fv(facets.places.place, false, place);
      gl.uniformMatrix4fv(facets.places.view, false, view);
      gl.uniform4fv(facets.places.plane, plane);
      gl.uniform3fv(facets.places.eye, eye);
      gl.uniform3fv(facets.places.tint, tint);
      gl.uniform1f(facets.places.hatch, hatch);
      gl.uniform1f(facets.places.glow, glow);
      gl.bindVertexArray(what.made);
      gl.drawArrays(gl.TRIANGLES, 0, what.count);
    },
    drawLines: (what, { place, view, plane }, { ink, width, lift, through }) => {
      gl.useProgram(lines.whole);
      gl.stencilFunc(through ? gl.ALWAYS : gl.EQUAL, 0, 255);
      gl.stencilMask(0);
      gl.uniformMatrix4fv(lines.places.place, false, place);
      gl.uniformMatrix4fv(lines.places.view, false, view);
      gl.uniform4fv(lines.places.plane, plane);
      gl.uniform4fv(lines.places.ink, ink);
      gl.uniform2f(lines.places.pixel, 2 / canvas.width, 2 / canvas.height);
      gl.uniform1f(lines.places.width, width);
      gl.uniform1f(lines.places.lift, lift);
      if (through) gl.disable(gl.DEPTH_TEST);
      gl.bindVertexArray(what.made);
      gl.drawArraysInstanced(gl.TRIANGLE_STRIP, 0, 4, what.count);
      gl.enable(gl.DEPTH_TEST);
      gl.stencilMask(255);
    },
  };
};
