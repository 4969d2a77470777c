// Where the viewer stands: round the axis, above the horizon, at right angles to the picture (no vanishing points, so that
// equal lengths look equal).
const camera = (low, high) => {
  const middle = low.map((v, i) => (v + high[i]) / 2);
  const radius = Math.hypot(...high.map((v, i) => v - low[i])) / 2 || 1;
  const start = { round: -50, above: 24, half: radius, at: middle };
  const here = { ...start };
  const sides = () => {
    const [r, e] = [here.round * Math.PI / 180, here.above * Math.PI / 180];
    const eye = [Math.cos(e) * Math.cos(r), Math.cos(e) * Math.sin(r), Math.sin(e)];
    const right = [-Math.sin(r), Math.cos(r), 0];
    const up = [-Math.sin(e) * Math.cos(r), -Math.sin(e) * Math.sin(r), Math.cos(e)];
    return { eye, right, up };
  };
  const dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  return {
    here,
    radius,
    sides,
    dot,
    // All of a box in the middle of the picture.
    frame: (box, aspect) => {
      here.at = [0, 1, 2].map(i => (box[i] + box[i + 3]) / 2);
      const { right, up } = sides();
      const half = side => side.reduce((sum, v, i) => sum + Math.abs(v) * (box[i + 3] - box[i]) / 2, 0);
      const [w, h] = [half(right), half(up)];
      here.half = 1.06 * (aspect > 1 ? Math.max(h, w / aspect) : Math.max(w, h * aspect));
    },
    reset: () => Object.assign(here, start),
    turn: (round, above) => {
      here.round = (here.round + round) % 360;
      here.above = Math.max(-90, Math.min(90, here.above + above));
    },
    zoom: by => { here.half = Math.max(radius / 60, Math.min(radius * 6, here.half * by)); },
    // By shares of the picture's height.
    shift: (x, y) => {
      const { right, up } = sides();
      here.at = here.at.map((v, i) => v - 2 * here.half * (x * right[i] + y * up[i]));
    },
    // From the vessel's millimetres to clip space, by columns; depth takes in all that may be pulled apart.
    view: (aspect, reach) => {
      const { eye, right, up } = sides();
      const [w, h] = aspect > 1 ? [here.half * aspect, here.half] : [here.half, here.half / aspect];
      return new Float32Array([
        right[0] / w, up[0] / h, -eye[0] / reach, 0,
        right[1] / w, up[1] / h, -eye[1] / reach, 0,
        right[2] / w, up[2] / h, -eye[2] / reach, 0,
        -dot(right, here.at) / w, -dot(up, here.at) / h, dot(eye, here.at) / reach, 1]);
    },
    // The point of the picture's plane under a place in it, both from -1 to 1.
    under: (x, y, aspect) => {
      const { right, up } = sides();
      const [w, h] = aspect > 1 ? [here.half * aspect, here.half] : [here.half, here.half / aspect];
      return here.at.map((v, i) => v + x * w * right[i] + y * h * up[i]);
    },
  };
};
