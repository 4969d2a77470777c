#!/usr/bin/python3
"""Reads every DXF of a build with ezdxf: audit, layers, closed outlines, and the figures that the summary states."""
import math
import re
import warnings

import ezdxf
from shapely.errors import ShapelyDeprecationWarning
from shapely.prepared import prep
from shapely.strtree import STRtree

from checks import flat_file, run_reader, summary_of
from dxf_loops import loop_of

COLOURS = {"CUT": 7, "BEND": 6, "MARK": 3, "NOTE": 8}
DRAWN_BY = {"MARK": {"LINE", "CIRCLE", "ARC", "LWPOLYLINE", "POLYLINE"}, "BEND": {"LINE", "LWPOLYLINE", "POLYLINE"}}
DEVELOPMENTS = {"plane", "rolled", "wrapped", "blank", "folded", "gore", "cone"}
warnings.simplefilter("ignore", ShapelyDeprecationWarning)  # Debian 12 has 1.8, whose tree announces that of 2
WRITTEN_TO = 1e-5  # of a coordinate in the file, mm
FLOAT_CODES = set(range(10, 60)) | set(range(140, 148)) | set(range(210, 240))


def check(folder, checks, version="AC1015"):
    stated = {flat_file(p): p["flat"] for p in summary_of(folder)["parts"] if p.get("flat")}
    files = sorted(folder.rglob("*.dxf"))
    checks.that(files or not stated, folder, "no DXF at all")
    for file in files:
        where = f"{folder.name}/{file.relative_to(folder)}"
        check_tags(file.read_bytes(), where, checks)
        try:
            drawing = ezdxf.readfile(file)
        except (ezdxf.DXFError, OSError, ValueError) as error:
            checks.that(False, where, f"ezdxf cannot read it: {error}")
            continue
        check_drawing(drawing, version, where, checks)
        check_entities(drawing, where, checks)
        name = str(file.relative_to(folder))
        if name.startswith(("flats/", "wraps/")):
            loops = check_cut(drawing, where, checks)
            if loops and name in stated:
                check_figures(loops, stated[name], where, checks)
        elif name.startswith("nests/"):
            check_nest(drawing, where, checks)


def check_tags(data, where, checks):
    checks.that(all(b < 128 for b in data), where, "not ASCII")
    checks.that(b"\r" not in data or data.count(b"\r\n") == data.count(b"\n"), where, "mixed line ends")
    lines = data.decode("ascii", "replace").splitlines()
    checks.that(len(lines) % 2 == 0, where, "odd number of lines")
    numbers = [v.strip() for c, v in zip(lines[::2], lines[1::2]) if c.strip().isdigit() and int(c) in FLOAT_CODES]
    checks.that(all(re.fullmatch(r"-?\d+(\.\d+)?", n) for n in numbers), where, "a number with an exponent or no number")
    checks.that(not any(re.fullmatch(r"-0(\.0+)?", n) for n in numbers), where, "a negative zero")


def check_drawing(drawing, version, where, checks):
    auditor = drawing.audit()
    checks.that(not auditor.errors, where, f"audit errors: {[e.message for e in auditor.errors]}")
    checks.that(not auditor.fixes, where, f"audit fixes: {[e.message for e in auditor.fixes]}")
    checks.that(drawing.dxfversion == version, where, f"version {drawing.dxfversion}, not {version}")
    if version != "AC1009":  # R12 has no such variable
        checks.that(drawing.header.get("$INSUNITS") == 4, where, "units are not millimetres")
    for layer in drawing.layers:
        name = layer.dxf.name
        if name in COLOURS:
            checks.that(layer.color == COLOURS[name], where, f"layer {name} has colour {layer.color}")


def check_entities(drawing, where, checks):
    space = drawing.modelspace()
    checks.that(len(space) > 0, where, "empty")
    checks.that(len(drawing.layout("Layout1") if "Layout1" in drawing.layout_names() else []) == 0, where, "paper space is used")
    seen = set()
    for e in space:
        layer, kind = e.dxf.layer, e.dxftype()
        checks.that(layer == "0" or layer in COLOURS, where, f"{kind} on layer {layer}")
        checks.that(layer == "0" or drawing.layers.has_entry(layer), where, f"layer {layer} is not in the table")
        checks.that(layer not in DRAWN_BY or kind in DRAWN_BY[layer], where, f"{kind} on layer {layer}")
        if e.dxf.hasattr("extrusion"):
            checks.that(e.dxf.extrusion.isclose((0, 0, 1)), where, f"{kind} seen from below")
        shape, size = outline(e)
        if shape is not None:
            checks.that(size > 1e-6, where, f"{kind} on {layer} of no length")
            checks.that((layer, shape) not in seen, where, f"{kind} on {layer} stands twice: {shape}")
            seen.add((layer, shape))


def outline(e):
    """Something equal for equal shapes, and the length of its shortest piece."""
    def point(p):
        return round(p[0], 6), round(p[1], 6)

    kind = e.dxftype()
    if kind == "LINE":
        ends = point(e.dxf.start), point(e.dxf.end)
        return ("LINE", *sorted(ends)), math.dist(*ends)
    if kind == "CIRCLE":
        return (kind, point(e.dxf.center), round(e.dxf.radius, 6)), e.dxf.radius
    if kind == "ARC":
        angles = e.dxf.start_angle, e.dxf.end_angle
        return (kind, point(e.dxf.center), e.dxf.radius, *angles), math.radians((angles[1] - angles[0]) % 360) * e.dxf.radius
    if kind in ("LWPOLYLINE", "POLYLINE"):
        if kind == "LWPOLYLINE":
            points = [point(v) for v in e.get_points("xy")]
        else:
            points = [point(v.dxf.location) for v in e.vertices]
        pieces = list(zip(points, points[1:] + points[:1] if (e.closed if kind == "LWPOLYLINE" else e.is_closed) else points[1:]))
        return ("POLYLINE", frozenset(map(frozenset, pieces))), min((math.dist(*p) for p in pieces), default=0)
    return None, None


def check_cut(drawing, where, checks):
    """Closed loops, inner ones first, none meeting another, all within the last. Returns them, or None if any is open."""
    entities = [e for e in drawing.modelspace() if e.dxf.layer == "CUT"]
    loops = [loop_of(e) for e in entities]
    for e, loop in zip(entities, loops):
        checks.that(loop is not None, where, f"{e.dxftype()} on CUT is not a closed loop")
        elevation = e.dxf.get("elevation", 0) if e.dxftype() != "CIRCLE" else e.dxf.center.z
        checks.that((elevation.z if hasattr(elevation, "z") else elevation) == 0, where, "CUT off the plane")
    if not checks.that(loops, where, "nothing to cut") or None in loops:
        return None
    polygons = [loop.polygon() for loop in loops]
    for loop, polygon in zip(loops, polygons):
        checks.that(loop.shortest > 1e-6, where, "a CUT piece of no length")
        checks.that(polygon.is_valid, where, f"a CUT loop crosses itself near {polygon.centroid.coords[0]}")
    if not all(p.is_valid for p in polygons):
        return None
    checks.that(max(p.area for p in polygons) == polygons[-1].area, where, "the outer loop is not the last")
    outer = max(polygons, key=lambda p: p.area)
    inner = [p for p in polygons if p is not outer]
    inside = prep(outer)
    for polygon in inner:
        checks.that(inside.contains_properly(polygon), where, f"an inner loop leaves the outer one near {polygon.centroid.coords[0]}")
    tree = STRtree(inner)
    for polygon in inner:
        others = [o for o in tree.query(polygon) if o is not polygon and o.intersects(polygon)]
        checks.that(not others, where, f"two inner loops meet near {polygon.centroid.coords[0]}")
    return loops


def check_nest(drawing, where, checks):
    """Closed loops; pieces lie apart, and every other loop inside one of them."""
    loops = [loop_of(e) for e in drawing.modelspace() if e.dxf.layer == "CUT"]
    if not checks.that(loops and None not in loops, where, "nothing to cut, or a loop is open"):
        return
    polygons = sorted((loop.polygon() for loop in loops), key=lambda p: -p.area)
    pieces = []
    for polygon in polygons:
        around = [piece for piece in pieces if piece.intersects(polygon)]
        if around:
            checks.that(len(around) == 1 and around[0].contains(polygon), where,
                        f"two pieces of the nest meet near {polygon.centroid.coords[0]}")
        else:
            pieces.append(polygon)


def check_figures(loops, flat, where, checks):
    fit = flat["fit"]
    checks.that(fit["deviation_mm"] <= fit["tolerance_mm"], where, "the stated deviation exceeds the stated tolerance")
    x0, y0, x1, y1 = extents(loops)
    # Each of the two sides may lie off by the deviation.
    side = WRITTEN_TO + 2 * fit["deviation_mm"]
    checks.near(x1 - x0, flat["width_mm"], side, where, "width")
    checks.near(y1 - y0, flat["height_mm"], side, where, "height")
    checks.that(len(loops) == flat["pierces"], where, f"{len(loops)} loops, {flat['pierces']} pierces stated")
    checks.that(len(loops) - 1 == flat["holes"], where, f"{len(loops) - 1} inner loops, {flat['holes']} holes stated")
    outer = max(loop.area for loop in loops)
    area = 2 * outer - sum(loop.area for loop in loops)
    # A strip along the whole cut, as wide as the curve may lie off.
    checks.near(area, flat["area_mm2"] + flat["development"].get("lap_area_mm2", 0), flat["cut_length_mm"] * (fit["tolerance_mm"] + WRITTEN_TO), where, "area")
    length = sum(loop.length for loop in loops)
    checks.near(length, flat["cut_length_mm"], length_tolerance(loops, fit["tolerance_mm"] + WRITTEN_TO), where, "cut length")
    drawn = sum(loop.entities for loop in loops)
    checks.that(drawn == fit["entities"], where, f"{drawn} lines and arcs, {fit['entities']} stated")
    development = flat["development"]
    kind = development["kind"]
    checks.that(kind in DEVELOPMENTS, where, f"no such development: {kind}")
    if kind in ("rolled", "wrapped"):
        girth = 2 * math.pi * development["radius_mm"]
        if kind == "rolled":
            girth = girth / development["sheets"] - development["gap_mm"] + 2 * development.get("trim_mm", 0)
        checks.near(x1 - x0, girth + development.get("lap_mm", 0), side, where, "width against its share of the girth, less the gap")


def extents(loops):
    boxes = [loop.extents() for loop in loops]
    return min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes)


def length_tolerance(loops, off):
    """A curve that lies off by at most d differs in length by at most d x the angle it turns through, and by half the
    square of its slope error: at most 8 d / l on a piece of length l that starts and ends on the curve (a parabola)."""
    return sum(off * loop.turning() + sum(32 * off * off / p.length for p in loop.pieces if p.is_arc) for loop in loops) + WRITTEN_TO


if __name__ == "__main__":
    run_reader(check)
