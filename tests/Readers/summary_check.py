#!/usr/bin/python3
"""Checks summary.json, manifest.json, the tables and the report of a build against each other and the files."""
import csv
import hashlib
import html.parser
import io
import json
import math
import re

import numpy

from checks import flat_file, run_reader
from solid_check import placements

KINDS = {".dxf", ".stl", ".csv", ".json", ".html", ".3mf", ".glb", ".pdf", ".svg", ".png"}  # of file that some reader here opens
SECTIONS = {"flats/", "wraps/", "solids/", "holes/", "templates/", "mockup/", "section/", "pictures/", "nests/", "fixtures/"}
ADDED_UP = {"length_mm": "weld_length_mm", "filler_g": "filler_g", "arc_min": "arc_min"}


def check(folder, checks):
    summary = load(folder / "summary.json", checks)
    manifest = load(folder / "manifest.json", checks)
    if summary is None or manifest is None:
        return
    check_manifest(manifest, folder, checks)
    where = f"{folder.name}/summary.json"
    for key in ("schema", "parts", "welds", "totals", "findings"):
        checks.that(key in summary, where, f"no {key}")
    ids = [p["id"] for p in summary["parts"]]
    checks.that(ids and len(ids) == len(set(ids)), where, "no parts, or two with one id")
    for part in summary["parts"]:
        check_part(part, folder, where, checks)
    check_totals(summary, where, checks)
    check_marks(summary.get("mockup"), where, checks)
    for finding in summary.get("findings", []):
        checks.that(finding["severity"] in ("error", "warning", "note"), where, f"severity {finding['severity']}")
    for file in sorted(folder.rglob("*.csv")):
        check_table(file, f"{folder.name}/{file.relative_to(folder)}", checks)
    for file in sorted(folder.rglob("*.html")):
        check_page(file, f"{folder.name}/{file.relative_to(folder)}", checks)


def load(file, checks):
    """Strict: finite numbers, no negative zero, six decimals, no key twice."""
    where = f"{file.parent.name}/{file.name}"

    def number(text):
        value = float(text)
        checks.that(math.isfinite(value) and not (value == 0 and text.startswith("-")), where, f"the number {text}")
        checks.that(abs(round(value, 6) - value) <= 1e-15 * abs(value), where, f"{text} has more than six decimals")
        return value

    def whole(text):
        checks.that(text != "-0", where, f"the number {text}")
        return int(text)

    def no_number(text):
        checks.that(False, where, f"the number {text}")
        return 0.0

    def mapping(pairs):
        checks.that(len(pairs) == len({k for k, _ in pairs}), where, f"a key stands twice among {[k for k, _ in pairs]}")
        return dict(pairs)

    try:
        text = file.read_bytes().decode("utf-8")
        checks.that("\r" not in text, where, "a carriage return")
        checks.that(str(file.resolve().parent) not in text, where, "names a path of this machine")
        return json.loads(text, parse_float=number, parse_int=whole, parse_constant=no_number, object_pairs_hook=mapping)
    except (OSError, ValueError) as error:
        checks.that(False, where, str(error))
        return None


def check_manifest(manifest, folder, checks):
    where = f"{folder.name}/manifest.json"
    stated = {f["path"]: f for f in manifest["files"]}
    present = {f.relative_to(folder).as_posix() for f in folder.rglob("*") if f.is_file()} - {"manifest.json"}
    checks.that(set(stated) == present, where, f"listed and present differ in {sorted(set(stated) ^ present)}")
    for name in sorted(set(stated) & present):
        data = (folder / name).read_bytes()
        checks.that(hashlib.sha256(data).hexdigest() == stated[name]["sha256"], where, f"the hash of {name} differs")
        checks.that(len(data) == stated[name]["bytes"], where, f"the size of {name} differs")
    for name in sorted(present):
        checks.that(any(name.endswith(kind) for kind in KINDS), where, f"no reader opens {name}")
        checks.that("/" not in name or name.startswith(tuple(SECTIONS)), where, f"{name} stands in no known folder")


def check_marks(mockup, where, checks):
    """Letters are as large as a printer makes them, in bars that stand apart, and nothing both stands there and does not."""
    if mockup is None:
        return
    for mark in mockup["marks"]:
        height = mark["letter_height_mm"]
        checks.that(height is None or height >= 5 - 1e-9, where, f"letters of {height} mm in '{mark['text']}'")
        checks.that(mark["fields"] >= 1, where, f"'{mark['text']}' has no fields")
    named = {mark["text"] for mark in mockup["marks"] if mark["letter_height_mm"] is not None}
    checks.that(not named & {mark["text"] for mark in mockup["left_out"]}, where, "a name stands on the print and is left out")
    checks.that(mockup["names"] != "none" or not mockup["marks"], where, "marks that nobody asked for")


def check_part(part, folder, where, checks):
    who = f"part {part['id']}"
    for role, name in part["files"].items():
        checks.that((folder / name).is_file(), where, f"{who}: no file {name}")
        checks.that(name.startswith({"flat": "flats/", "wrap": "wraps/", "solid": "solids/", "holes": "holes/", "template": "templates/"}.get(role, "")),
                    where, f"{who}: {role} is {name}")
    checks.that(bool(part.get("flat")) == bool(flat_file(part)), where, f"{who}: figures of a flat without file, or the reverse")
    checks.that(part.get("solid") and part["files"].get("solid"), where, f"{who} has no solid")
    checks.that(part["quantity"] >= 1 and part["mass_g"] > 0 and part["thickness_mm"] > 0, where, f"{who}: quantity, mass or thickness")
    frames = placements(part)
    checks.that(len(frames) == part["quantity"], where, f"{who}: {len(frames)} placements for {part['quantity']} pieces")
    for frame in frames:
        turn = frame[:3, :3]
        # Nine rounded numbers: each product is off by at most 3 x 1e-6.
        rigid = abs(turn @ turn.T - numpy.eye(3)).max() < 5e-6 and numpy.linalg.det(turn) > 0 and (frame[3] == [0, 0, 0, 1]).all()
        checks.that(rigid, where, f"{who}: a placement is no rigid motion (rows, translation in the last column)")


def check_totals(summary, where, checks):
    welds, totals = summary.get("welds", []), summary.get("totals", {})
    ids = {p["id"] for p in summary["parts"]} | {p["name"] for p in summary["parts"]}
    for weld in welds:
        checks.that(set(weld["between"]) <= ids, where, f"weld {weld['name']} joins {weld['between']}, not all parts")
        checks.that(weld["length_mm"] > 0 and weld["leg_mm"]["min"] <= weld["leg_mm"]["max"], where, f"weld {weld['name']}: length or legs")
    # Each rounded to 1e-6, the total once more.
    rounding = 0.5e-6 * (len(welds) + 1) + 1e-9
    for one, total in ADDED_UP.items():
        checks.near(sum(w[one] for w in welds), totals[total], rounding, where, f"sum of {one}")
    packing = sum(item["mass_g"] or 0 for item in summary["bought"] if item["volume_ml"] is not None)
    mass = sum(p["mass_g"] * p["quantity"] for p in summary["parts"]) + packing
    pieces = sum(p["quantity"] for p in summary["parts"])
    checks.near(mass, totals["mass_g"], 0.5e-6 * (pieces + 1) + 1e-9, where, "sum of mass_g")
    job = totals["job_min"]
    checks.that(job["low"] <= job["likely"] <= job["high"], where, "job_min is out of order")


def check_table(file, where, checks):
    text = file.read_bytes().decode("utf-8")
    checks.that(text.endswith("\n"), where, "no line end at the end")
    rows = list(csv.reader(io.StringIO(text, newline=""), strict=True))
    if not checks.that(rows and len(rows[0]) > 1, where, "no header"):
        return
    checks.that(len(set(rows[0])) == len(rows[0]) and all(rows[0]), where, f"header {rows[0]}")
    checks.that(all(len(row) == len(rows[0]) for row in rows), where, "rows of different lengths")
    bad = [cell for row in rows[1:] for cell in row if re.fullmatch(r"-0(\.0*)?|[+-]?(nan|inf(inity)?|∞)", cell, re.IGNORECASE)]
    checks.that(not bad, where, f"cells {bad}")


class Page(html.parser.HTMLParser):
    """Collects what a page would fetch."""

    def __init__(self):
        super().__init__()
        self.fetched, self.tags = [], 0

    def handle_starttag(self, tag, attrs):
        self.tags += 1
        for name, value in attrs:
            if name in ("src", "srcset", "poster", "data") or (name == "href" and tag in ("link", "image", "use")):
                if not (value or "").startswith(("data:", "#")):
                    self.fetched.append(f"{tag} {name}={value}")


def check_page(file, where, checks):
    text = file.read_bytes().decode("utf-8")
    page = Page()
    page.feed(text)
    checks.that(page.tags > 0, where, "no page")
    fetched = page.fetched + re.findall(r"@import[^;]*|url\((?!['\"]?(?:data:|#))[^)]*\)", text)
    checks.that(not fetched, where, f"not self-contained: {fetched}")
    checks.that("NaN" not in re.findall(r"\bNaN\b|\bInfinity\b", re.sub(r"<script.*?</script>", "", text, flags=re.DOTALL)), where, "shows NaN")


if __name__ == "__main__":
    run_reader(check)
