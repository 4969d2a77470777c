// The checks, in groups that each open a report in their own way.
const fs = require("node:fs");
const path = require("node:path");
const AXE = fs.readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

const LARGEST = 3e6; // bytes: it must pass through a message

// Opens the report and hands over the page with whatever went wrong on the way.
const open = async ({ browser, folder }, options, prepare) => {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const page = await context.newPage(), trouble = [];
  page.on("console", said => { if (["error", "warning"].includes(said.type())) trouble.push(`console: ${said.text()}`); });
  page.on("pageerror", problem => trouble.push(`script: ${problem.message}`));
  page.on("request", request => {
    if (!request.url().startsWith("data:") && request.url() !== address) trouble.push(`request: ${request.url()}`);
  });
  const address = `file://${path.resolve(folder, "report.html")}`;
  if (prepare) await page.addInitScript(prepare);
  await page.goto(address);
  return { page, trouble, close: () => context.close() };
};

// Waits for the model; what went wrong on the way ends the wait.
const drawn = async (page, trouble, that) => {
  for (const end = Date.now() + 20000; Date.now() < end;) {
    if (await page.evaluate(() => document.documentElement.dataset.drawn)) return true;
    if (trouble.length > 0) break;
    await page.waitForTimeout(40);
  }
  that(false, `the model does not come: ${trouble.join("; ") || "too late"}`);
  return false;
};
// What the model's picture shows, once what was asked for is drawn.
const look = page => page.evaluate(() => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() =>
  done(document.getElementById("model-canvas").toDataURL())))));
const slide = (page, id, value) => page.locator(`#${id}`).fill(String(value));
const keep = async (page, { pictures, folder }, name, whole) => {
  if (pictures) await page.screenshot({ path: path.join(pictures, `${path.basename(folder)}-${name}.png`), fullPage: whole });
};

const audit = async (page, that) => {
  await page.evaluate(AXE);
  const found = await page.evaluate(() => window.axe.run(document, { resultTypes: ["violations"] }));
  that(found.passes.length > 10, "the accessibility checker hardly ran");
  that(found.violations.length === 0, `accessibility: ${found.violations.map(v =>
    `${v.id} at ${v.nodes.map(node => node.target.join(" ")).slice(0, 3).join(", ")}`).join("; ")}`);
};

const fits = page => page.evaluate(() => document.documentElement.scrollWidth <= document.documentElement.clientWidth);

exports.opens = async all => {
  const { folder, that } = all;
  that(fs.statSync(path.join(folder, "report.html")).size < LARGEST, "larger than a message takes");
  const { page, trouble, close } = await open(all, {});
  await drawn(page, trouble, that);
  const times = await page.evaluate(() => {
    const [sight] = performance.getEntriesByName("first-contentful-paint");
    return { sight: Math.round(sight ? sight.startTime : 0), model: Number(document.documentElement.dataset.drawn) };
  });
  console.log(`${path.basename(folder)}: first sight after ${times.sight} ms, model after ${times.model} ms`);
  that(await page.locator("h1").count() === 1 && await page.locator(".verdict").isVisible(), "no verdict");
  const summary = JSON.parse(fs.readFileSync(path.join(folder, "summary.json"), "utf8"));
  const text = await page.locator("main").textContent();
  that(summary.findings.every(finding => text.includes(finding.message)), "a finding of the summary is missing");
  that(summary.parts.every(part => text.includes(part.name)), "a part of the summary is missing");
  const rows = await page.locator("tr[id^=weld-]").evaluateAll(all => all.map(row => row.textContent));
  that(summary.welds.every(weld => rows.some(row => row.startsWith(weld.number + weld.name))), "a weld of the summary is missing");
  const links = await page.locator("a").evaluateAll(all => all.map(a => a.getAttribute("href")));
  const lost = links.filter(link => link.startsWith("#") ? false : !fs.existsSync(path.join(folder, decodeURIComponent(link))));
  that(links.length > 10 && lost.length === 0, `a link leads to no file: ${lost.slice(0, 3).join(", ")}`);
  const nowhere = await page.evaluate(() => [...document.querySelectorAll("a[href^='#']")]
    .filter(a => !document.getElementById(a.getAttribute("href").slice(1))).map(a => a.getAttribute("href")));
  that(nowhere.length === 0, `a link leads nowhere on the page: ${nowhere.slice(0, 3).join(", ")}`);
  await keep(page, all, "desktop", true);
  for (const part of summary.parts) await opensFlat(page, part, that);
  await audit(page, that);
  that(trouble.length === 0, trouble.join("; "));
  await close();
};

const opensFlat = async (page, part, that) => {
  const fold = page.locator(`#part-${part.id}`), flat = fold.locator("figure svg");
  await fold.locator("summary").click();
  that(await fold.locator("p, figure").first().isHidden(), `${part.id} does not fold away`);
  await fold.locator("summary").focus();
  await page.keyboard.press("Enter");
  if (!part.flat) return;
  const size = await flat.count() > 0 ? await flat.boundingBox() : null;
  that(size && size.width > 100 && size.height > 30, `${part.id} has no picture of its flat`);
  that(size && await flat.locator(".cut").evaluate(path => path.getTotalLength() > 50), `the flat of ${part.id} is empty`);
};

exports.model = async all => {
  const { that } = all;
  const { page, trouble, close } = await open(all, { viewport: { width: 680, height: 420 } });
  if (!await drawn(page, trouble, that)) return close();
  const canvas = page.locator("#model-canvas");
  await canvas.scrollIntoViewIfNeeded();
  const still = await look(page);
  that(await page.evaluate(picture => new Promise(done => {
    const image = new Image();
    image.onload = () => {
      const copy = Object.assign(document.createElement("canvas"), { width: image.width, height: image.height });
      const context = copy.getContext("2d");
      context.drawImage(image, 0, 0);
      const { data } = context.getImageData(0, 0, image.width, image.height);
      const colours = new Set();
      for (let i = 0; i < data.length; i += 4) colours.add(data[i] << 16 | data[i + 1] << 8 | data[i + 2]);
      done(colours.size > 50);
    };
    image.src = picture;
  }), still), "the model is not drawn");

  const box = await canvas.boundingBox(), [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 120, y + 30, { steps: 4 });
  await page.mouse.up();
  const turned = await look(page);
  that(turned !== still, "the mouse does not turn the model");
  await canvas.focus();
  await page.keyboard.press("ArrowLeft");
  that(await look(page) !== turned, "the arrow keys do not turn the model");
  await page.keyboard.press("+");
  await page.keyboard.press("Home");
  that(await look(page) === still, "Home does not bring the first view back");

  const first = page.locator("[data-part]").first();
  await first.uncheck();
  that(await look(page) !== still, "hiding a part changes nothing");
  await page.locator("#show-all").click();
  that(await first.isChecked() && await look(page) === still, "showing all does not bring the part back");

  await slide(page, "cut-at", 5);
  const cut = await look(page);
  that(await page.locator("#cut").isChecked() && cut !== still, "the cut takes nothing away");
  await slide(page, "cut-round", 90);
  that(await look(page) !== cut, "the cut does not turn");
  await keep(page, all, "cut", false);
  await page.locator("#cut").uncheck();
  that(await look(page) === still, "the cut does not close again");
  await slide(page, "apart", 100);
  that(await look(page) !== still, "nothing comes apart");
  await page.locator("#names").check();
  await look(page);
  that(await page.locator("#model-names span").count() >= await page.locator("[data-part]").count(), "a name is missing on the model");
  await keep(page, all, "apart", false);
  await page.locator("#names").uncheck();
  await slide(page, "apart", 0);
  that(await look(page) === still, "what came apart does not go back");

  await canvas.click({ position: { x: box.width / 2, y: box.height * 0.6 } });
  that(/^Chosen: \S/.test(await page.locator("#model-said").textContent()), "a tap chooses no part");
  await page.locator("#show-chosen").click();
  that(await page.locator("[data-part]:checked").count() === 1, "only the chosen part should be shown");
  await page.locator("#show-all").click();
  await canvas.press("Escape");

  await first.uncheck();
  await page.locator("details.part").first().evaluate(fold => { fold.open = true; });
  await page.locator("details.part button").first().click();
  that(await first.isChecked() && /^Chosen: \S/.test(await page.locator("#model-said").textContent()),
    "a part's own button does not show it on the model");
  await canvas.press("Escape");

  const seams = page.locator("[data-weld] button");
  that(await seams.count() > 0, "no weld can be shown");
  const before = await look(page);
  for (const seam of await seams.all()) {
    await seam.click();
    const [number, said] = [await seam.textContent(), await page.locator("#model-said").textContent()];
    that(await seam.getAttribute("aria-pressed") === "true" && said.startsWith(`Shown: ${number}, `), `${number} is not shown on the model`);
  }
  that(await look(page) !== before, "a weld leaves the model as it is");
  await keep(page, all, "seam", false);
  that(trouble.length === 0, trouble.join("; "));
  await close();
};

exports.phone = async all => {
  const { that } = all;
  const dark = await open(all, { viewport: { width: 360, height: 740 }, colorScheme: "dark", hasTouch: true, isMobile: true });
  if (!await drawn(dark.page, dark.trouble, that)) return dark.close();
  that(await fits(dark.page), "wider than a phone");
  for (const fold of await dark.page.locator("details").all()) await fold.evaluate(f => { f.open = true; });
  that(await fits(dark.page), "wider than a phone when all is open");
  await audit(dark.page, that);
  await keep(dark.page, all, "phone", true);
  await dark.close();
};

exports.plain = async all => {
  const { that } = all;
  const { page, trouble, close } = await open(all, { javaScriptEnabled: false });
  that(await page.locator(".stills svg").first().isVisible(), "without a script there is no picture");
  that(await page.locator("#viewer").isHidden(), "without a script there are tools that do nothing");
  that((await page.locator("details.part").all()).length > 0 && await page.locator("details.part:not([open])").count() === 0,
    "without a script parts are folded away");
  await keep(page, all, "plain", true);
  that(trouble.length === 0, trouble.join("; "));
  await close();
  const flat = await open(all, {}, () => { HTMLCanvasElement.prototype.getContext = () => null; });
  await flat.page.waitForFunction(() => document.getElementById("model-said").textContent !== "");
  that(await flat.page.locator("#viewer").isHidden() && await flat.page.locator(".stills svg").first().isVisible(),
    "without WebGL there is no picture");
  that(flat.trouble.length === 0, flat.trouble.join("; "));
  await flat.close();
};

exports.prints = async all => {
  const { that } = all;
  const { page, trouble, close } = await open(all, { viewport: { width: 700, height: 900 } });
  if (!await drawn(page, trouble, that)) return close();
  await page.emulateMedia({ media: "print" });
  that(await page.locator("nav").isHidden() && await page.locator("#viewer").isHidden(), "tools are printed");
  that(await page.locator(".stills svg").first().isVisible(), "no picture is printed");
  const paper = await page.pdf({ format: "A4" });
  that(paper.subarray(0, 5).toString() === "%PDF-" && paper.length > 20000, "nothing is printed");
  if (all.pictures) fs.writeFileSync(path.join(all.pictures, `${path.basename(all.folder)}.pdf`), paper);
  that(trouble.length === 0, trouble.join("; "));
  await close();
};
