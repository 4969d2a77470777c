// Facets from the page's own letters: whole steps, each told from the last, signs folded in, seven bits an octet.
const decode = mesh => {
  const letters = atob(mesh.data);
  let at = 0;
  const next = () => {
    let value = 0, shift = 0, octet;
    do {
      octet = letters.charCodeAt(at++);
      value |= (octet & 127) << shift;
      shift += 7;
    } while (octet > 127);
    return (value >>> 1) ^ -(value & 1);
  };
  const points = new Float32Array(3 * mesh.vertices), corners = new Uint32Array(3 * mesh.triangles);
  const last = [0, 0, 0];
  for (let i = 0; i < points.length; i++) {
    last[i % 3] += next();
    points[i] = mesh.origin[i % 3] + mesh.step * last[i % 3];
  }
  for (let i = 0, a = 0; i < corners.length; i += 3) {
    a += next();
    corners[i] = a;
    corners[i + 1] = a + next();
    corners[i + 2] = a + next();
  }
  return { points, corners };
};

const CREASE = Math.cos(Math.PI / 6);
const HUB = 48; // a vertex of more facets is the middle of a flat fan

// Corners with normals that are smooth but across creases, and the creases as lines.
const shape = ({ points, corners }) => {
  const count = corners.length / 3, facets = new Float32Array(3 * count);
  for (let t = 0; t < count; t++) {
    const [a, b, c] = [3 * corners[3 * t], 3 * corners[3 * t + 1], 3 * corners[3 * t + 2]];
    const ux = points[b] - points[a], uy = points[b + 1] - points[a + 1], uz = points[b + 2] - points[a + 2];
    const vx = points[c] - points[a], vy = points[c + 1] - points[a + 1], vz = points[c + 2] - points[a + 2];
    facets[3 * t] = uy * vz - uz * vy;
    facets[3 * t + 1] = uz * vx - ux * vz;
    facets[3 * t + 2] = ux * vy - uy * vx;
  }
  const size = t => Math.hypot(facets[3 * t], facets[3 * t + 1], facets[3 * t + 2]) || 1;
  const sizes = Float32Array.from({ length: count }, (_, t) => size(t));
  const together = (s, t) => (facets[3 * s] * facets[3 * t] + facets[3 * s + 1] * facets[3 * t + 1]
    + facets[3 * s + 2] * facets[3 * t + 2]) / (sizes[s] * sizes[t]);

  // Facets round each vertex, one after the other.
  const first = new Uint32Array(points.length / 3 + 1), around = new Uint32Array(corners.length);
  for (const v of corners) first[v + 1]++;
  for (let v = 1; v < first.length; v++) first[v] += first[v - 1];
  const filled = first.slice();
  corners.forEach((v, i) => { around[filled[v]++] = i / 3 | 0; });

  const positions = new Float32Array(3 * corners.length), normals = new Float32Array(3 * corners.length), lines = [];
  for (let i = 0; i < corners.length; i++) {
    const v = corners[i], t = i / 3 | 0;
    positions.set(points.subarray(3 * v, 3 * v + 3), 3 * i);
    const hub = first[v + 1] - first[v] > HUB;
    for (let k = hub ? 0 : first[v]; k < (hub ? 1 : first[v + 1]); k++) {
      const s = hub ? t : around[k];
      if (together(s, t) < CREASE) continue;
      for (let axis = 0; axis < 3; axis++) normals[3 * i + axis] += facets[3 * s + axis];
    }
    // The edge from here to the next corner, once: the other facet has it the other way round.
    const w = corners[3 * t + (i + 1) % 3];
    if (v > w) continue;
    for (let k = first[w]; k < first[w + 1]; k++) {
      const s = around[k];
      if (s === t || (corners[3 * s] !== v && corners[3 * s + 1] !== v && corners[3 * s + 2] !== v)) continue;
      if (together(s, t) < CREASE) lines.push(...points.subarray(3 * v, 3 * v + 3), ...points.subarray(3 * w, 3 * w + 3));
    }
  }
  return { positions, normals, lines: new Float32Array(lines) };
};
