// Opens finished reports in a headless Chromium and uses them as a reader would.
//   NODE_PATH=<folder>/node_modules node report_check.cjs out/a out/b ...     every check over finished builds
//   NODE_PATH=<folder>/node_modules node report_check.cjs --selftest out/a     each kind of damage must be found
//   ... --pictures <folder> also keeps what was seen, to be looked at
// Ends with "N passed, N failed".
const fs = require("node:fs");
const os = require("node:os");
const path = require("node:path");
const { chromium } = require("playwright-core");
const groups = require("./report_groups.cjs");
const damages = require("./report_damages.cjs");

const FLAGS = ["--no-sandbox", "--disable-background-networking", "--disable-sync", "--disable-quic",
  "--use-angle=swiftshader", "--enable-unsafe-swiftshader", "--ignore-gpu-blocklist"];

class Checks {
  passed = 0;
  failures = [];

  that(held, where, what) {
    if (held) this.passed++;
    else this.failures.push(`${where}: ${what}`);
  }

  report() {
    for (const failure of this.failures) console.log(`FAIL ${failure}`);
    console.log(`${this.passed} passed, ${this.failures.length} failed`);
    return this.failures.length ? 1 : 0;
  }
}

// A group that breaks has failed, and the others still run.
const read = async (browser, folder, names, checks, pictures) => {
  for (const name of names) {
    const where = `${path.basename(folder)} ${name}`;
    try {
      await groups[name]({ browser, folder, pictures, that: (held, what) => checks.that(held, where, what) });
    } catch (problem) {
      checks.that(false, where, `breaks: ${problem.message.split("\n")[0]}`);
    }
  }
};

const selftest = async (browser, folder, checks) => {
  for (const { group, expect, change } of damages) {
    const copy = fs.mkdtempSync(path.join(os.tmpdir(), "report-"));
    fs.cpSync(folder, copy, { recursive: true });
    const page = path.join(copy, "report.html");
    fs.writeFileSync(page, change(fs.readFileSync(page, "utf8"), copy));
    const found = new Checks();
    await read(browser, copy, [group], found);
    for (const words of expect) {
      checks.that(found.failures.some(failure => failure.includes(words)), `selftest ${group}`,
        `nobody says "${words}" but: ${found.failures.join(" | ") || "nothing"}`);
    }
    fs.rmSync(copy, { recursive: true });
  }
};

// Two reports at a time: half of the wait is for a page to be laid out.
const readAll = async (browser, folders, checks, pictures) => {
  const left = [...folders];
  await Promise.all([1, 2].map(async () => {
    for (let folder = left.shift(); folder; folder = left.shift()) {
      await read(browser, folder, Object.keys(groups), checks, pictures);
    }
  }));
};

const main = async () => {
  const words = process.argv.slice(2);
  const at = words.indexOf("--pictures"), pictures = at >= 0 ? words.splice(at, 2)[1] : null;
  const testing = words[0] === "--selftest";
  const folders = testing ? words.slice(1) : words;
  const checks = new Checks();
  checks.that(folders.length > 0, "call", "no folder given");
  const browser = await chromium.launch({ executablePath: process.env.CHROMIUM || "/usr/bin/chromium", args: FLAGS });
  if (testing) await selftest(browser, folders[0], checks);
  else await readAll(browser, folders, checks, pictures);
  await browser.close();
  process.exitCode = checks.report();
};

main();
