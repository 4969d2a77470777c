// Ties the model to the page: its tools, the list of parts, the welds' numbers, and what is said aloud.
const panel = () => {
  const box = id => document.getElementById(id);
  const holder = box("viewer"), canvas = box("model-canvas"), said = box("model-said");
  if (!holder) return;
  let stage;
  holder.hidden = false;
  try {
    stage = scene(canvas, JSON.parse(box("model-data").textContent));
  } catch (problem) {
    console.warn(problem);
  }
  if (!stage) {
    holder.hidden = true;
    said.textContent = "This browser cannot turn the model; the pictures below show it.";
    return;
  }
  document.documentElement.classList.add("turns");
  const { view, state, pieces, seams, change } = stage;
  const say = (text, ...more) => said.replaceChildren(text, ...more);
  const names = part => pieces.filter(piece => piece.part === part);
  const link = (to, text) => Object.assign(document.createElement("a"), { href: `#${to}`, textContent: text });

  const choose = part => {
    state.chosen = part;
    state.seam = null;
    press();
    const piece = part && names(part)[0];
    if (piece) say("Chosen: ", link(`part-${part}`, piece.name.replace(/ \d+$/, names(part).length > 1 ? "" : "$&")));
    else say("");
    change();
  };

  // Parts, shown or hidden by name.
  const boxes = [...holder.querySelectorAll("[data-part]")];
  const show = (part, shown) => {
    names(part).forEach(piece => { piece.shown = shown; });
    boxes.find(b => b.dataset.part === part).checked = shown;
  };
  boxes.forEach(b => b.addEventListener("change", () => {
    show(b.dataset.part, b.checked);
    change();
  }));
  box("show-all").addEventListener("click", () => {
    boxes.forEach(b => show(b.dataset.part, true));
    change();
  });
  box("show-chosen").addEventListener("click", () => {
    if (!state.chosen) {
      say("Choose a part on the model first.");
      return;
    }
    boxes.forEach(b => show(b.dataset.part, b.dataset.part === state.chosen));
    change();
  });

  // From a part's flat to the part.
  for (const fold of document.querySelectorAll("details.part")) {
    const part = fold.id.slice("part-".length);
    const title = fold.querySelector("h3").textContent;
    const button = Object.assign(document.createElement("button"), { type: "button", textContent: `Show ${title} on the model` });
    button.addEventListener("click", () => {
      show(part, true);
      choose(part);
      canvas.scrollIntoView({ block: "center" });
    });
    fold.querySelector("summary").after(button);
  }

  // Where to look from, what to cut away, how far to pull apart.
  for (const button of holder.querySelectorAll("[data-from]")) {
    button.addEventListener("click", () => {
      [view.here.round, view.here.above] = button.dataset.from.split(" ").map(Number);
      fit();
    });
  }
  const fit = () => {
    view.frame(stage.whole.map((v, i) => v + state.apart * (stage.spread[i] - v)), canvas.clientWidth / canvas.clientHeight);
    change();
  };
  const home = () => {
    view.reset();
    fit();
  };
  const read = () => {
    state.cut = box("cut").checked;
    state.level = box("cut-level").checked;
    state.at = box("cut-at").value / 100;
    state.round = Number(box("cut-round").value);
    change();
  };
  for (const id of ["cut", "cut-level", "cut-at", "cut-round"]) box(id).addEventListener("input", read);
  for (const id of ["cut-at", "cut-round"]) {
    box(id).addEventListener("input", () => {
      box("cut").checked = true;
      read();
    });
  }
  box("apart").addEventListener("input", () => {
    state.apart = box("apart").value / 100;
    fit();
  });

  // Names on the model: lines of text over the picture, moved apart where they meet.
  const tags = box("model-names");
  const label = () => {
    const all = box("names").checked;
    const seam = seams.find(s => s.number === state.seam);
    // Of several alike the first stands for all.
    const wanted = pieces.filter(p => p.shown && (all || p.part === state.chosen) && names(p.part)[0] === p)
      .map(p => [p.name, stage.middle(p)]);
    if (seam) {
      const line = seam.lines[0], at = 3 * (line.length / 6 | 0), carrier = names(seam.part)[0];
      wanted.push([seam.number, [0, 1, 2].map(i => line[at + i] + (carrier ? state.apart * carrier.move[i] : 0))]);
    }
    const [w, h] = [canvas.clientWidth, canvas.clientHeight];
    const rows = wanted.map(([name, at]) => ({ name, at: stage.project(at) }))
      .map(({ name, at: [x, y] }) => ({ name, x: (1 + x) / 2 * w, y: (1 - y) / 2 * h })).sort((a, b) => a.y - b.y);
    let floor = -Infinity;
    tags.replaceChildren(...rows.map(({ name, x, y }) => {
      const tag = Object.assign(document.createElement("span"), { textContent: name });
      y = Math.max(y, floor);
      floor = y + 20;
      tag.style.left = `${Math.max(0, Math.min(w - 40, x))}px`;
      tag.style.top = `${y}px`;
      return tag;
    }));
  };
  stage.after(label);
  box("names").addEventListener("input", change);

  // Welds: the number becomes a button.
  const marks = [...document.querySelectorAll("[data-weld]")].map(mark => {
    const button = Object.assign(document.createElement("button"), { type: "button", textContent: mark.dataset.weld });
    button.setAttribute("aria-pressed", "false");
    button.setAttribute("aria-label", `Show ${mark.dataset.weld} on the model`);
    button.addEventListener("click", () => showSeam(mark.dataset.weld));
    mark.replaceChildren(button);
    return button;
  });
  const press = () => marks.forEach(b => b.setAttribute("aria-pressed", String(b.textContent === state.seam)));
  const showSeam = number => {
    const seam = seams.find(s => s.number === number), points = seam.lines.flat();
    const middle = [0, 1, 2].map(i => points.filter((_, k) => k % 3 === i).reduce((sum, v) => sum + v, 0) / (points.length / 3));
    [state.seam, state.chosen] = [number, null];
    press();
    // From the side that it lies on, from above or below.
    const off = Math.hypot(middle[0], middle[1]);
    if (off > 0.1 * view.radius) view.here.round = Math.atan2(middle[1], middle[0]) * 180 / Math.PI - 25;
    view.here.above = middle[2] < (2 * stage.whole[2] + stage.whole[5]) / 3 ? -20 : 24;
    canvas.scrollIntoView({ block: "center" });
    say(`Shown: ${number}, ${seam.name}. `, link(`weld-${number}`, "Back to its row"));
    change();
  };

  hands(canvas, stage, choose, home);
  new ResizeObserver(change).observe(canvas);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", change);
  home();
  stage.after(() => { document.documentElement.dataset.drawn = String(Math.round(performance.now())); });
};
// After the first sight of the page: the model may take its time.
requestAnimationFrame(() => setTimeout(panel));
