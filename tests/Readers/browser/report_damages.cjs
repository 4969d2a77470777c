// Damaged reports: each with what is done to a sound one, the group that must find it, and all that must be said.
const fs = require("node:fs");
const path = require("node:path");

const replace = (...pairs) => text => pairs.reduce((now, [from, to]) => {
  const next = now.replace(from, to);
  if (next === now) throw new Error(`nothing to damage at ${from}`);
  return next;
}, text);

module.exports = [
  {
    group: "opens",
    expect: ["127.0.0.1", "inline script", "finding of the summary", "weld of the summary", "no file: welds.csv", "nowhere on the page: #caution",
      "has no picture of its flat", "is empty", "accessibility"],
    change: (text, folder) => {
      fs.rmSync(path.join(folder, "welds.csv"));
      return replace(
        ["<h1>", "<img src='http://127.0.0.1:9/a.png' alt='a'><h1>"],
        ["</main>", "<script>document.title = 'x'</script></main>"],
        [/<ul class="findings">[\s\S]*?<\/section>/, "</section>"],
        [/<tr id="weld-W1">[\s\S]*?<\/tr>/, ""],
        ["href=\"#cautions\"", "href=\"#caution\""],
        [/<svg[^>]*aria-labelledby="flat-[\s\S]*?<\/svg>/, ""],
        [/<path class="cut" d="[^"]*"/, "<path class=\"cut\" d=\"\""],
        [/<label>(<input type="checkbox" id="names"[^>]*>)[^<]*<\/label>/, "<div>$1</div>"])(text);
    },
  },
  { group: "opens", expect: ["the model does not come: console"], change: replace(["const decode = mesh", "const decode = ((mesh"]) },
  { group: "model", expect: ["the model does not come"], change: replace([/(id="model-data">)[^<]*/, "$1{}"]) },
  { group: "model", expect: ["the model is not drawn"], change: replace([/"triangles":\d+/g, "\"triangles\":0"]) },
  {
    group: "phone",
    expect: ["wider than a phone", "accessibility: html-has-lang"],
    change: replace(["<footer>", `<footer><pre>${"w".repeat(400)}</pre>`], ["<html lang=\"en\">", "<html>"]),
  },
  {
    group: "plain",
    expect: ["without a script parts are folded", "without a script there is no picture", "without WebGL there is no picture"],
    change: replace([/(class="part") open=""/, "$1"], ["class=\"stills\"", "class=\"pictures\""]),
  },
  { group: "prints", expect: ["no picture is printed"], change: replace(["class=\"stills\"", "class=\"pictures\""]) },
];
