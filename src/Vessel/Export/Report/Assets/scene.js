// The model as it stands: which pieces are shown, how far apart, cut where; drawn when something changed.
const scene = (canvas, model) => {
  const draw = drawing(canvas);
  if (!draw) return null;
  const rgb = hex => [1, 3, 5].map(i => parseInt(hex.slice(i, i + 2), 16) / 255);
  const shapes = model.meshes.map(decode);
  const buffers = shapes.map(mesh => {
    const { positions, normals, lines } = shape(mesh);
    return { facets: draw.facets({ positions, normals }), creases: draw.lines(lines) };
  });
  const seams = model.seams.map(seam => {
    const ends = seam.lines.flatMap(line => {
      const pairs = [];
      for (let i = 0; i + 5 < line.length; i += 3) pairs.push(...line.slice(i, i + 6));
      return pairs;
    });
    return { ...seam, drawn: draw.lines(new Float32Array(ends)) };
  });
  const pieces = model.pieces.map((piece, i) => ({ ...piece, tint: rgb(piece.tint), index: i, shown: true }));
  const box = (low, high) => pieces.reduce((all, { box, move }) => all.map((v, i) => i < 3
    ? Math.min(v, box[i] + low * move[i]) : Math.max(v, box[i] + high * move[i - 3])), [1, 1, 1, -1, -1, -1].map(v => v * 1e9));
  const whole = box(0, 0), spread = box(1, 1);
  const view = camera(whole.slice(0, 3), whole.slice(3));
  const reach = 3 * Math.max(view.radius, Math.hypot(...[0, 1, 2].map(i => Math.max(
    Math.abs(spread[i] - view.here.at[i]), Math.abs(spread[i + 3] - view.here.at[i])))));
  const state = { apart: 0, cut: false, level: false, round: 0, at: 0, chosen: null, seam: null };

  const place = ({ place: p, move }) => new Float32Array([p[0], p[1], p[2], 0, p[3], p[4], p[5], 0, p[6], p[7], p[8], 0,
    p[9] + state.apart * move[0], p[10] + state.apart * move[1], p[11] + state.apart * move[2], 1]);

  // What lies in front of the plane is taken away. It goes through the middle, or beside it by a share of the size.
  const plane = () => {
    if (!state.cut) return [0, 0, 0, 1];
    if (state.level) {
      const [low, high] = [whole[2], whole[5]].map((z, i) => z + state.apart * ((i ? spread[5] : spread[2]) - z));
      return [0, 0, 1, (low + high) / 2 + state.at * (high - low) / 2];
    }
    const r = state.round * Math.PI / 180, half = Math.max(...whole.map((v, i) => i % 3 < 2 ? Math.abs(v) : 0));
    return [Math.sin(r), -Math.cos(r), 0, state.at * half];
  };

  const ink = name => {
    const value = getComputedStyle(canvas).getPropertyValue(name).trim();
    return [...rgb(value.length === 7 ? value : "#888888"), 1];
  };

  let waiting = false;
  const after = [];
  const paint = () => {
    waiting = false;
    const dense = devicePixelRatio || 1;
    const [w, h] = [Math.round(canvas.clientWidth * dense), Math.round(canvas.clientHeight * dense)];
    if (w < 1 || h < 1) return;
    if (canvas.width !== w || canvas.height !== h) [canvas.width, canvas.height] = [w, h];
    draw.clear();
    const { eye } = view.sides();
    const shared = { view: view.view(w / h, reach), plane: plane(), eye };
    const edge = ink("--edge"), seamInk = ink("--seam");
    const seen = pieces.filter(p => p.shown).map(p => [p, { ...shared, place: place(p) }, state.chosen === p.part]);
    for (const [piece, here, chosen] of seen) {
      draw.drawFacets(buffers[piece.mesh].facets, here, { tint: piece.tint, hatch: piece.index % 2 ? 1 : -1, glow: chosen ? 1 : 0 });
    }
    for (const [piece, here, chosen] of seen) {
      draw.drawLines(buffers[piece.mesh].creases, here, { ink: edge, width: (chosen ? 2.6 : 1.1) * dense, lift: 0.35 / reach });
    }
    const seam = seams.find(s => s.number === state.seam);
    if (seam) {
      const carrier = pieces.find(p => p.part === seam.part) || { move: [0, 0, 0] };
      const here = { ...shared, plane: [0, 0, 0, 1], place: place({ place: [1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0], move: carrier.move }) };
      // Thin where metal hides it, thick where it can be seen.
      draw.drawLines(seam.drawn, here, { ink: seamInk, width: 2 * dense, lift: 0, through: true });
      draw.drawLines(seam.drawn, here, { ink: seamInk, width: 6 * dense, lift: 1.5 / reach });
    }
    after.forEach(run => run());
  };
  const change = () => {
    if (waiting) return;
    waiting = true;
    requestAnimationFrame(paint);
  };

  // The nearest facet under a place of the picture, both from -1 to 1; null for none.
  const pick = (x, y) => {
    const { eye } = view.sides(), from = view.under(x, y, canvas.clientWidth / canvas.clientHeight), cut = plane();
    let best = null, nearest = -Infinity;
    for (const piece of pieces.filter(p => p.shown)) {
      const p = place(piece), { points, corners } = shapes[piece.mesh];
      const rest = from.map((v, i) => v - p[12 + i]);
      const local = v => [0, 4, 8].map(k => p[k] * v[0] + p[k + 1] * v[1] + p[k + 2] * v[2]);
      const [o, d] = [local(rest), local(eye)];
      for (let i = 0; i < corners.length; i += 3) {
        const t = hit(points, 3 * corners[i], 3 * corners[i + 1], 3 * corners[i + 2], o, d);
        if (t === null || t <= nearest) continue;
        if (view.dot(from.map((v, k) => v + t * eye[k]), cut) > cut[3]) continue;
        [best, nearest] = [piece, t];
      }
    }
    return best;
  };

  const project = at => {
    const m = view.view(canvas.clientWidth / canvas.clientHeight, reach);
    return [0, 1].map(k => m[k] * at[0] + m[4 + k] * at[1] + m[8 + k] * at[2] + m[12 + k]);
  };
  const middle = piece => [0, 1, 2].map(i => (piece.box[i] + piece.box[i + 3]) / 2 + state.apart * piece.move[i]);
  return { view, state, pieces, seams, change, pick, project, middle, after: run => after.push(run), whole, spread };
};

// Along o + t d, in the frame of the points (Moeller and Trumbore, 1997); null beside the facet.
const hit = (p, a, b, c, o, d) => {
  const e = [p[b] - p[a], p[b + 1] - p[a + 1], p[b + 2] - p[a + 2]], f = [p[c] - p[a], p[c + 1] - p[a + 1], p[c + 2] - p[a + 2]];
  const h = [d[1] * f[2] - d[2] * f[1], d[2] * f[0] - d[0] * f[2], d[0] * f[1] - d[1] * f[0]];
  const det = e[0] * h[0] + e[1] * h[1] + e[2] * h[2];
  if (Math.abs(det) < 1e-12) return null;
  const s = [o[0] - p[a], o[1] - p[a + 1], o[2] - p[a + 2]];
  const u = (s[0] * h[0] + s[1] * h[1] + s[2] * h[2]) / det;
  if (u < 0 || u > 1) return null;
  const q = [s[1] * e[2] - s[2] * e[1], s[2] * e[0] - s[0] * e[2], s[0] * e[1] - s[1] * e[0]];
  const v = (d[0] * q[0] + d[1] * q[1] + d[2] * q[2]) / det;
  if (v < 0 || u + v > 1) return null;
  return (f[0] * q[0] + f[1] * q[1] + f[2] * q[2]) / det;
};
