#!/usr/bin/python3
"""Volumes, areas and weld lengths of kernel/*.yaml, and what they hold, against Open CASCADE (kernel/kernel.cpp), from the sizes in the design alone:
kernel_check.py <folder>..., each the output of the design of its name."""
import math
import pathlib
import subprocess

import numpy
import yaml

from checks import run_reader, summary_of
from kernel_heads import form, head, inner_face, inside, on_head, segments, thickness
from kernel_mounts import HOLES, listed, numbers, plates, straps
from kernel_shell import FAR, VAST, across, along, axis, body, cylinder, lean, outer_at, sizes, through, upright

HERE = pathlib.Path(__file__).resolve().parent / "kernel"
LIBRARIES = ["TKFillet", "TKBO", "TKPrim", "TKTopAlgo", "TKBRep", "TKGeomBase", "TKG3d", "TKG2d", "TKGeomAlgo", "TKMath", "TKernel"]
EXACT = 2e-6  # relative: the kernel follows an intersection curve to 1e-7 mm or so, along lines that graze to less
TOUCH = 0.001  # mm
MOST = 25      # events a design


def check(folder, checks):
    design = design_of(folder)
    summary = summary_of(folder)
    parts = {part["name"]: part for part in summary["parts"]}
    low = None
    asked = [*questions(design), *levels(design, summary["capacity"])]
    for (what, _), answer in zip(asked, ask([text for _, text in asked])):
        kind, name = what.split(" ", 1)
        where = f"{folder.name}/{name}"
        if kind == "weld":
            stated = next(w["length_mm"] for w in summary["welds"] if w["name"].startswith(f"{name} to "))
            checks.near(stated, answer, EXACT * answer, where, "length of the weld")
        elif kind == "below":
            low = answer
        elif kind == "holds":
            if low is not None:  # of just below and just above: their mean
                low, answer = None, (low + answer) / 2
            # The metal of a tube that a level cuts is summed line by line, to 1e-4 of it; else as exact as the kernel.
            checks.near((summary["capacity"]["brim_ml"] if name == "brim" else float(name)) * 1000, answer, EXACT * answer + 1e-4 * tubes_inside(design), where, "what it holds")
        elif kind == "volume":
            checks.near(parts[name]["volume_mm3"], answer, EXACT * answer, where, "volume")
        else:
            solid = parts[name]["solid"]
            # A facet lies at most the chord off its surface; on a curved one it then spans sqrt(8 chord / curvature), and its
            # area is short by the same share as a polygon's girth is: 2/3 chord / radius, of the least radius here.
            share = 2 * solid["chord_mm"] / least_radius(design)
            checks.near(solid["area_mm2"], answer, share * answer, where, "area of the mesh")
            checks.near(solid["volume_mm3"], parts[name]["volume_mm3"], solid["chord_mm"] * answer, where, "volume of the mesh")


def levels(design, capacity):
    """The whole room, and what lies below each event's level, leaning as it does."""
    room = inside(design)
    for port in design["ports"]:
        if port["joint"] == "set_in":
            room += f" {standing(port, design)} cut"
    yield "holds brim", f"{room} volume"
    # At the floor and at the ceiling the area jumps by all of it.
    events = [e for e in capacity["events"] if 1e-6 < e["volume_ml"] < capacity["brim_ml"] - 1e-3]
    for i in range(0, len(events), max(1, math.ceil(len(events) / MOST))):
        event = events[i]
        lean, toward = math.radians(event["lean_deg"]), math.radians(event["toward_deg"])
        up = (-math.sin(lean) * math.cos(toward), -math.sin(lean) * math.sin(toward), math.cos(lean))
        # At an event the level touches an edge, which the kernel takes badly: just below and just above. Their mean differs by half that
        # step times what the level's area jumps by: a tube's end, some 100 mm2, so less than 0.1 mm3.
        for kind, step in (("below", -TOUCH), ("holds", TOUCH)):
            base = along((0, 0, event["height_mm"]), up, step - VAST)
            yield f"{kind} {event['volume_ml']!r}", f"{room} {cylinder(base, up, VAST, VAST)} common volume"


def tubes_inside(design):
    return sum(math.pi * (sizes(port)[0] ** 2 - sizes(port)[1] ** 2) * (port["inside_length"] + sizes(port)[0])
               for port in design["ports"] if port["joint"] == "set_in")


def standing(port, design):
    """The tube's metal from its inner end to its free end, less its windows."""
    outside, bore, _ = sizes(port)
    if port["in"] == "shell":
        shell = design["shell"]
        foot, way = axis(port, shell)
        wall = through(foot, way, shell)
        end = along(foot, way, -wall - port["inside_length"])
    else:
        angle = math.radians(port["at"].get("angle", 0))
        x, y, top = port["at"]["radius"] * math.cos(angle), port["at"]["radius"] * math.sin(angle), port["in"] == "top"
        way = (0, 0, 1 if top else -1)
        end = (x, y, inner_face(port["in"], design, port["at"]["radius"]) - way[2] * port["inside_length"])
        wall = thickness(port["in"], design, port["at"]["radius"])
    far = port["inside_length"] + wall + port["length"]
    return f"{cylinder(end, way, outside, far)} {cylinder(along(end, way, -FAR), way, bore, far + 2 * FAR)} cut{windows(port, end, way)}"


def windows(port, end, way):
    """Sharp rectangles with radial walls, as wedges about the tube's axis; their angles count from the tube's lowest side, or from that
    away from the vessel's axis where it stands upright."""
    text, (outside, bore, _) = "", sizes(port)
    angle = math.radians(port["at"].get("angle", 0))
    away = (math.cos(angle), math.sin(angle), 0)
    low = away if port["in"] != "shell" else tuple(w * way[2] - z for w, z in zip(way, (0, 0, 1)))
    aside = (way[1] * low[2] - way[2] * low[1], way[2] * low[0] - way[0] * low[2], way[0] * low[1] - way[1] * low[0])
    for row in port.get("windows", []):
        wide = row["width"] / outside
        for i in range(row["count"]):
            start = math.radians(row.get("angle", 0)) + 2 * math.pi * i / row["count"] - wide / 2
            first = [math.cos(start) * x + math.sin(start) * y for x, y in zip(low, aside)]
            corners = [(bore - 1, row["up"]), (outside + 1, row["up"]), (outside + 1, row["up"] + row["height"]), (bore - 1, row["up"] + row["height"])]
            wedge = f"{numbers(corners[0])} start " + " ".join(f"{numbers(corner)} line" for corner in corners[1:])
            text += f" {wedge} {math.degrees(wide):.17g} swung {numbers([*end, *way, *first])} place cut"
    return text


def design_of(folder):
    return yaml.safe_load((HERE / f"{folder.name}.yaml").read_text())


def least_radius(design):
    """Of whatever is curved."""
    given = [*listed(design, "strap"), *listed(design, "bracket"), design["top"], design["bottom"]]
    bolts = [HOLES[bolts["diameter"]] / 2 for item in given for bolts in (item.get("bolts"), item.get("feet", {}).get("bolts")) if bolts]
    turns = [item[key] for item in given for key in ("inside_radius", "knuckle_radius", "nose_radius", "corner") if key in item]
    return min([port["tube"]["outside_diameter"] / 2 - port["tube"]["wall"] for port in design["ports"]] + bolts + turns)


def program():
    source, binary = HERE / "kernel.cpp", HERE.parent / "bin/kernel"
    if not binary.exists() or binary.stat().st_mtime < source.stat().st_mtime:
        binary.parent.mkdir(exist_ok=True)
        subprocess.run(["g++", "-O1", "-std=c++17", "-isystem/usr/include/opencascade", source, "-o", binary,
                        *[f"-l{library}" for library in LIBRARIES]], check=True)
    return binary


def ask(texts):
    run = subprocess.run([program()], input="\n".join(texts) + "\n", capture_output=True, encoding="utf-8", check=True)
    return [float(line) for line in run.stdout.split()]


def questions(design):
    for port in design["ports"]:
        if port["joint"] == "set_in":
            yield f"volume {port['name']}", f"{standing(port, design)} volume"
            yield f"area {port['name']}", f"{standing(port, design)} area"
        yield from branch(port, design) if port["in"] == "shell" else on_head(port, design)
    for name, metal in sheets(design):
        yield f"volume {name}", f"{metal} volume"
        yield f"area {name}", f"{metal} area"
    for end in ("top", "bottom"):
        if form(design[end]) == "cone":
            pieces = segments(end, design) if "segments" in design[end] else []
        else:
            # Between the faces of an ellipsoid lie parallel curves, which the kernel does not draw exactly.
            over_it = "".join(f" {opening(port, design['shell'])} cut" for port in design["ports"] if over(port, design) == end)
            pieces = [] if form(design[end]) == "ellipsoid" else [(end, head(end, design) + over_it)]
        for name, solid in pieces:
            yield f"volume {name}", f"{solid} volume"
            yield f"area {name}", f"{solid} area"
    yield from straps(design)
    yield from plates(design)


def sheets(design):
    """Of the shell, whole or of several sheets: (name, solid) of one that is plain and of each with holes, turned so that its first seam
    lies at 0."""
    shell = design["shell"]
    height, ports = shell["height"], [port for port in design["ports"] if port["in"] == "shell"]
    if shell.get("sheets", 1) == 1:
        metal = f"{body(shell, 0, height)} {body(shell, -FAR, height + FAR, across(shell))} cut"
        yield "shell", metal + "".join(f" {opening(port, shell)} cut" for port in ports)
        return
    pitch = 360 / shell["sheets"]
    (bottom, top), wall = (outer_at(shell, 0), outer_at(shell, height)), across(shell)
    metal = f"{bottom - wall:.17g} 0 start {bottom:.17g} 0 line {top:.17g} {height} line {top - wall:.17g} {height} line {pitch:.17g} swung"
    own = {}
    for port in ports:
        foot, _ = axis(port, shell)
        number = int((math.degrees(math.atan2(foot[1], foot[0])) - shell["seam_angle"]) % 360 / pitch)
        at = {**port["at"], "angle": port["at"].get("angle", 0) - shell["seam_angle"] - number * pitch}
        own.setdefault(number, []).append({**port, "at": at})
    if len(own) < shell["sheets"]:
        yield "shell sheet", metal
    for number, turned in sorted(own.items()):
        yield f"shell sheet {number + 1}", metal + "".join(f" {opening(port, shell)} cut" for port in turned)


def reach(port, shell):
    """From the foot inward along the axis to the middle of the vessel, so that only the near wall is opened."""
    tilt = math.radians(port["at"].get("tilt", 0))
    return math.sqrt(outer_at(shell, port["at"]["height"]) ** 2 - port["at"].get("offset", 0) ** 2) / math.cos(tilt)


def opening(port, shell):
    """Drilled along the port's axis, from the middle of the vessel outward."""
    foot, way = axis(port, shell)
    inward = reach(port, shell)
    return cylinder(along(foot, way, -inward), way, sizes(port)[2], inward + port["length"])


def over(port, design):
    """The end over whose seam a port of the shell stands as well, a half sphere; none of them leans so much that it matters here."""
    at, outside = port["at"], sizes(port)[0]
    if port["in"] != "shell":
        return None
    low, high = at["height"] - outside, at["height"] + outside
    return "bottom" if low < 0 else "top" if high > design["shell"]["height"] else None


def branch(port, design):
    shell = design["shell"]
    outside, bore, _ = sizes(port)
    foot, way = axis(port, shell)
    inward = reach(port, shell)
    # A cone as far as no line of a port comes near its tip.
    beyond = 400 if lean(shell) == 0 else shell["height"] / 2
    whole = body(shell, -beyond, shell["height"] + beyond)
    if end := over(port, design):
        level = 0 if end == "bottom" else shell["height"]
        whole = f"{body(shell, 0, shell['height'])} 0 0 {level} {outer_at(shell, level)} ball fuse"
    if port["joint"] == "set_on":
        start = along(foot, way, -inward)
        free = inward + port["length"]
        tube = f"{cylinder(start, way, outside, free)} {cylinder(start, way, bore, free + FAR)} cut {whole} cut"
        if "elbow" in port:
            long = free + 10 * outside
            first, *others = mitred(port, foot, way)
            tube = f"{cylinder(start, way, outside, long)} {cylinder(start, way, bore, long + FAR)} cut {whole} cut {first} cut"
            yield from others
        if port["cut"] == "ground":
            yield f"volume {port['name']}", f"{tube} volume"
            yield f"area {port['name']}", f"{tube} area"
    far = inward + 2 * port["length"] + 4 * outside
    yield f"weld {port['name']}", f"{cylinder(along(foot, way, -inward), way, outside, far)} {whole} meet"


def mitred(port, foot, way):
    """What lies beyond the first mitre; then the volumes of the middle and the last piece, from planes through corners of the axis."""
    elbow, tilt, angle = port["elbow"], math.radians(port["at"].get("tilt", 0)), math.radians(port["at"].get("angle", 0))
    outside, bore, _ = sizes(port)
    turn = math.radians(elbow["angle"]) / (elbow["pieces"] - 1)
    half, side = elbow["radius"] * math.tan(turn / 2), math.radians(elbow["direction"])
    down = numpy.array([math.sin(tilt) * math.cos(angle), math.sin(tilt) * math.sin(angle), -math.cos(tilt)])
    aside = numpy.array([-math.sin(angle), math.cos(angle), 0])
    ways = [numpy.array(way)]
    hinge = numpy.cross(ways[0], math.cos(side) * down + math.sin(side) * aside)
    corners = [numpy.array(foot) + (port["length"] + half) * ways[0]]
    for number in range(1, elbow["pieces"]):
        ways.append(math.cos(turn) * ways[-1] + math.sin(turn) * numpy.cross(hinge, ways[-1]))
        corners.append(corners[-1] + (2 * half if number < elbow["pieces"] - 1 else half + elbow["end_length"]) * ways[-1])

    def beyond(number, sign):
        """Of a mitre's plane: one side of it, as far as need be."""
        normal = sign * (ways[number] + ways[number + 1])
        return cylinder(corners[number], normal / numpy.linalg.norm(normal), VAST, VAST)

    def piece(number):
        start, length = corners[number - 1] - 2 * outside * ways[number], numpy.linalg.norm(corners[number] - corners[number - 1])
        last = number == elbow["pieces"] - 1
        end = 2 * outside + length + (0 if last else 2 * outside)
        tube = f"{cylinder(start, ways[number], outside, end)} {cylinder(start - FAR * ways[number], ways[number], bore, end + 2 * FAR)} cut"
        return f"{tube} {beyond(number - 1, -1)} cut" + ("" if last else f" {beyond(number, 1)} cut")

    yield beyond(0, 1)
    for number, name in ((1, "elbow piece"), (elbow["pieces"] - 1, "elbow end")):
        yield f"volume {port['name']} {name}", f"{piece(number)} volume"
        yield f"area {port['name']} {name}", f"{piece(number)} area"


if __name__ == "__main__":
    run_reader(check)
