// Fingers, mouse and keys on the picture.
const hands = (canvas, { view, change, pick }, choose, home) => {
  const down = new Map();
  let moved = 0;
  const share = event => {
    const box = canvas.getBoundingClientRect();
    return [(event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height];
  };
  canvas.addEventListener("pointerdown", event => {
    canvas.setPointerCapture(event.pointerId);
    down.set(event.pointerId, [event.clientX, event.clientY]);
    moved = 0;
  });
  canvas.addEventListener("pointermove", event => {
    const before = down.get(event.pointerId);
    if (!before) return;
    const now = [event.clientX, event.clientY], [dx, dy] = [now[0] - before[0], now[1] - before[1]];
    moved += Math.abs(dx) + Math.abs(dy);
    if (down.size === 1 && !event.shiftKey && event.buttons !== 2) {
      view.turn(-dx * 0.4, dy * 0.4);
    } else if (down.size === 1) {
      view.shift(dx / canvas.clientHeight, -dy / canvas.clientHeight);
    } else {
      const other = [...down].find(([id]) => id !== event.pointerId)[1];
      const apart = p => Math.hypot(p[0] - other[0], p[1] - other[1]) || 1;
      view.zoom(apart(before) / apart(now));
      view.shift(dx / 2 / canvas.clientHeight, -dy / 2 / canvas.clientHeight);
    }
    down.set(event.pointerId, now);
    change();
  });
  const up = event => {
    if (down.delete(event.pointerId) && event.type === "pointerup" && moved < 6 && event.button === 0) {
      const [x, y] = share(event);
      const piece = pick(2 * x - 1, 1 - 2 * y);
      choose(piece && piece.part);
    }
  };
  canvas.addEventListener("pointerup", up);
  canvas.addEventListener("pointercancel", up);
  canvas.addEventListener("contextmenu", event => event.preventDefault());
  // The page keeps its wheel until the model has been taken hold of.
  canvas.addEventListener("wheel", event => {
    if (document.activeElement !== canvas && !event.ctrlKey) return;
    event.preventDefault();
    view.zoom(Math.exp(event.deltaY * 0.0012));
    change();
  }, { passive: false });
  canvas.addEventListener("keydown", event => {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const aside = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
    if (aside && event.shiftKey) view.shift(aside[0] * 0.05, aside[1] * 0.05);
    else if (aside) view.turn(aside[0] * 10, aside[1] * 10);
    else if (event.key === "+" || event.key === "=") view.zoom(0.85);
    else if (event.key === "-") view.zoom(1 / 0.85);
    else if (event.key === "Home") home();
    else if (event.key === "Escape") choose(null);
    else return;
    event.preventDefault();
    change();
  });
};
