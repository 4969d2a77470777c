#!/usr/bin/python3
"""Opens every PDF with poppler: page sizes, the scales on templates, their sheets, the girth of wraps, text that can be found."""
import csv
import math
import re
import subprocess
import xml.etree.ElementTree

from checks import run_reader, summary_of

MM = 25.4 / 72
SIZES = {"a4": (210, 297), "letter": (215.9, 279.4)}
SHEETS = {"a4": (420, 297), "letter": (431.8, 279.4)}  # of the drawing
TRUE = 0.05  # mm: what a steel rule shows


def check(folder, checks):
    summary = summary_of(folder)
    size = SIZES[summary["options"]["paper"]]
    parts = {p["files"]["template"]: p for p in summary["parts"] if "template" in p["files"]}
    for file in sorted(folder.rglob("*.pdf")):
        where = f"{folder.name}/{file.relative_to(folder)}"
        name = file.relative_to(folder).as_posix()
        pages = read_pages(file, where, checks)
        if pages is None:
            continue
        if name != "drawing.pdf":
            for number, page in enumerate(pages, 1):
                checks.that(same(page.size, size) or same(page.size, size[::-1]), where, f"page {number} is {page.size}, not {size}")
        if name == "drawing.pdf":
            check_drawing(pages, folder / "drawing.svg", summary, where, checks)
        if name == "as-built.pdf":
            check_as_built(pages, summary, where, checks)
        if name == "drill-sheets.pdf":
            check_drill_sheets(pages, folder, summary, where, checks)
        if name.startswith("templates/") or name == "gauge-strip.pdf":
            check_template(pages, where, checks)
            if checks.that(name in parts or name == "gauge-strip.pdf", where, "of no part") and name in parts:
                check_part(parts[name], pages, summary["options"], where, checks)


def check_template(pages, where, checks):
    for number, page in enumerate(pages, 1):
        for length in (100, 101.6):
            checks.that(any(abs(math.dist(a, b) - length) < TRUE and abs(a[1] - b[1]) < TRUE for a, b in page.lines), where,
                        f"page {number}: no line of {length} mm")
        checks.that("MEASURE THESE SCALES FIRST" in page.text, where, f"page {number}: no demand to measure")
    found = [re.search(r"sheet (\d+) of (\d+)", page.text) for page in pages]
    runs = []
    for number, count in ((int(m[1]), int(m[2])) for m in found if m):
        if number == 1:
            runs.append((count, []))
        if runs:
            runs[-1][1].append(number)
    for count, numbers in runs:
        checks.that(numbers == list(range(1, count + 1)), where, f"sheets {numbers} of {count}")


def check_drawing(pages, svg, summary, where, checks):
    """One lying sheet of twice the paper; every part and weld has its words on it, in the SVG too."""
    size = SHEETS[summary["options"]["paper"]]
    checks.that(len(pages) == 1 and same(pages[0].size, size), where, f"{len(pages)} pages, the first is {pages[0].size}, not {size}")
    root = xml.etree.ElementTree.parse(svg).getroot()
    sheet = tuple(float(re.sub("mm$", "", root.get(key))) for key in ("width", "height"))
    checks.that(same(sheet, size), where, f"the SVG is {sheet}, not {size}")
    spoken = {path.get("aria-label") for path in root.iter("{http://www.w3.org/2000/svg}path")}
    for name in [part["name"] for part in summary["parts"]]:
        checks.that(name in spoken and name in pages[0].text, where, f"no word of {name}")
    numbers = [weld.get("number", weld["name"]) for weld in summary["welds"]]
    for i, number in enumerate(numbers):
        # A run of equal welds shares a symbol: first and last are named.
        held = any(number in word or covers(word, numbers, i) for word in spoken if word)
        checks.that(held, where, f"no symbol of weld {number}")


def covers(word, numbers, i):
    """Of a run of equal welds first and last are named; one that no view shows has its side told."""
    ends = word.removesuffix(" far side").split("-")
    return len(ends) == 2 and set(ends) <= set(numbers) and numbers.index(ends[0]) <= i <= numbers.index(ends[1])


def check_as_built(pages, summary, where, checks):
    """Everything that is placed, every weld and every place that is looked at in the leak test has a line."""
    text = re.sub(r"\W", "", "".join(page.text for page in pages))
    for word in ([row["what"] for row in summary["plan"]["set_up"]] + [weld["name"] for weld in summary["welds"]]
                 + [blank["blank"] for blank in summary["plan"]["leak_test"]["blanks"]] + [point["what"] for point in summary["plan"]["leak_test"]["points"]]):
        checks.that(re.sub(r"\W", "", word) in text, where, f"no line of {word}")


def check_drill_sheets(pages, folder, summary, where, checks):
    """Every drilled part has its page, and every single hole its purpose on it."""
    for part in (p for p in summary["parts"] if "holes" in p["files"]):
        text = "".join(page.text for page in pages if f"{part['name']}: drill sheet" in page.text)
        if checks.that(text, where, f"no page of {part['name']}"):
            with open(folder / part["files"]["holes"], encoding="utf-8", newline="") as table:
                purposes = {row["purpose"] for row in csv.DictReader(table)}
            # Columns may break a line; letters and digits stay in order.
            flat = re.sub(r"\W", "", text)
            missing = [p for p in purposes if re.sub(r"\W", "", p) not in flat]
            checks.that(not missing, where, f"{part['name']}: no word of {missing}")


def check_part(part, pages, options, where, checks):
    for number, page in enumerate(pages, 1):
        checks.that(f"{part['name']}:" in page.text, where, f"page {number} does not name {part['name']}")
    development = (part.get("flat") or {}).get("development", {})
    if development.get("kind") == "wrapped" and part["kind"] != "shell" and len(pages) == 1:
        girth = 2 * math.pi * (development["radius_mm"] + options["paper_thickness_mm"] / 2)
        widths = [max(x for x, _ in outline) - min(x for x, _ in outline) for outline in pages[0].closed]
        checks.near(min(widths, key=lambda w: abs(w - girth), default=0), girth, TRUE, where, "once round")


def same(a, b):
    return abs(a[0] - b[0]) < TRUE and abs(a[1] - b[1]) < TRUE


def read_pages(file, where, checks):
    info = run(["pdfinfo", file], where, checks)
    count = re.search(r"^Pages: +(\d+)$", info or "", re.MULTILINE)
    if not checks.that(count is not None, where, "cannot read it"):
        return None
    checks.that(re.search(r"^Title: +\S", info, re.MULTILINE), where, "has no title")
    texts = (run(["pdftotext", "-layout", file, "-"], where, checks) or "").split("\f")
    pages = []
    for number in range(1, int(count[1]) + 1):
        # Unless told not to, it shrinks what is a hair larger than its own idea of the paper.
        drawn = run(["pdftocairo", "-svg", "-noshrink", "-nocenter", "-f", str(number), "-l", str(number), file, "-"], where, checks)
        if not checks.that(drawn, where, f"page {number} is not drawn"):
            return None
        pages.append(Page(drawn, texts[number - 1]))
    return pages


def run(command, where, checks):
    try:
        done = subprocess.run(command, capture_output=True, encoding="utf-8", timeout=60)
    except FileNotFoundError:
        checks.that(False, where, f"{command[0]} is missing")
        return None
    checks.that(done.returncode == 0 and not done.stderr.strip(), where, f"{command[0]}: {done.stderr.strip()[:200]}")
    return done.stdout


class Page:
    """What poppler draws, mm from the upper left: its size, each segment of a stroke that stands alone, each closed outline."""

    def __init__(self, svg, text):
        root = xml.etree.ElementTree.fromstring(svg)
        self.text = text
        self.size = tuple(float(re.sub("pt$", "", root.get(key))) * MM for key in ("width", "height"))
        self.lines, self.closed = [], []
        for path in root.iter("{http://www.w3.org/2000/svg}path"):
            # Attributes or a style, by poppler's release.
            style = dict(pair.split(":") for pair in path.get("style", "").split(";") if ":" in pair)
            if path.get("stroke", style.get("stroke", "none")) == "none":
                continue
            matrix = re.match(r"matrix\((.*)\)", path.get("transform", "matrix(1,0,0,1,0,0)"))
            a, b, c, d, e, f = (float(v) for v in re.split(r"[ ,]+", matrix[1]))
            for run in re.findall(r"M[^M]*", path.get("d")):
                numbers = [float(v) for v in re.findall(r"-?[\d.]+", run)]
                points = [((a * x + c * y + e) * MM, (b * x + d * y + f) * MM) for x, y in zip(numbers[::2], numbers[1::2])]
                if "Z" in run:
                    self.closed.append(points)
                elif len(points) == 2:
                    self.lines.append(points)


if __name__ == "__main__":
    run_reader(check)
