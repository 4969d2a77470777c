#!/usr/bin/python3
"""Volumes, areas and weld lengths of kernel/*.yaml against Open CASCADE (kernel/kernel.cpp), from the sizes in the design alone:
kernel_check.py <folder>..., each the output of the design of its name."""
import math
import pathlib
import subprocess

import numpy
import yaml

from checks import run_reader, summary_of

HERE = pathlib.Path(__file__).resolve().parent / "kernel"
LIBRARIES = ["TKBO", "TKPrim", "TKTopAlgo", "TKBRep", "TKGeomBase", "TKG3d", "TKG2d", "TKGeomAlgo", "TKMath", "TKernel"]
EXACT = 2e-6  # relative: the kernel follows an intersection curve to 1e-7 mm or so, along lines that graze to less
TOUCH = 0.001  # mm
MOST = 25      # events a design
VAST = 2000.0  # mm, past every vessel here
FAR = 10.0    # mm beyond a face, so that a cut passes it


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
    for i in range(0, len(events), max(1, len(events) // MOST)):
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
    """The tube's metal from its inner end outward, past the host's inside."""
    outside, bore, _ = sizes(port)
    if port["in"] == "shell":
        shell = design["shell"]
        foot, way = axis(port, shell)
        end = along(foot, way, -through(foot, way, shell) - port["inside_length"])
    else:
        angle = math.radians(port["at"].get("angle", 0))
        x, y, top = port["at"]["radius"] * math.cos(angle), port["at"]["radius"] * math.sin(angle), port["in"] == "top"
        way = (0, 0, 1 if top else -1)
        end = (x, y, inner_face(port["in"], design, port["at"]["radius"]) - way[2] * port["inside_length"])
    far = port["inside_length"] + port["length"] + 4 * outside
    return f"{cylinder(end, way, outside, far)} {cylinder(along(end, way, -FAR), way, bore, far + 2 * FAR)} cut"


def through(foot, way, shell):
    """From the outside to the inside, inward along an axis: r (s) = rho (z (s)), squared; both straight in s but for the root."""
    slope, inner = lean(shell), outer_at(shell, foot[2]) - across(shell)
    a = way[0] ** 2 + way[1] ** 2 - (slope * way[2]) ** 2
    b = foot[0] * way[0] + foot[1] * way[1] - inner * slope * way[2]
    c = foot[0] ** 2 + foot[1] ** 2 - inner ** 2
    return c / (b + math.sqrt(b * b - a * c))  # the nearer root of a s^2 - 2 b s + c


def lean(shell):
    """By how much the radius grows for each mm of height."""
    return (shell.get("top_diameter", shell["outside_diameter"]) - shell["outside_diameter"]) / 2 / shell["height"]


def across(shell):
    """The wall, cut level."""
    return shell["wall"] * math.hypot(1, lean(shell))


def outer_at(shell, height):
    return shell["outside_diameter"] / 2 + lean(shell) * height


def body(shell, low, high, less=0.0):
    """What the outside encloses between two levels, or something so much less in radius."""
    if lean(shell) == 0:
        return upright(low, outer_at(shell, low) - less, high)
    return f"{low} {outer_at(shell, low) - less:.17g} {high} {outer_at(shell, high) - less:.17g} cone"


def inner_face(end, design, radius):
    """Height of a head's inner face at a radius, in the vessel's frame."""
    given, shell = design[end], design["shell"]
    inner = shell["outside_diameter"] / 2 - shell["wall"]  # a dish stands on a cylinder
    if given["shape"] == "hemisphere":
        depth = math.sqrt(inner ** 2 - radius ** 2)
    else:
        depth = 0 if given["seat"] == "overlay" else -given["thickness"] - given["recess"]
    return shell["height"] + depth if end == "top" else -depth


def inside(design):
    """The room within shell and heads, without the bores of ports; every wall is as thick as the shell's."""
    shell = design["shell"]
    inner = shell["outside_diameter"] / 2 - shell["wall"]
    low, high = (inner_face(end, design, inner) if design[end]["shape"] == "flat" else given
                 for end, given in (("bottom", 0), ("top", shell["height"])))
    solid = body(shell, low, high, across(shell))
    for end, level in (("bottom", low), ("top", high)):
        if design[end]["shape"] != "flat":
            solid += f" {dish(end, design, inner, level)} fuse"
    return solid


def dish(end, design, inner, level):
    given, way = design[end], 1 if end == "top" else -1
    if given["shape"] == "hemisphere":
        return f"0 0 {level} {inner} ball"
    if given["shape"] == "ellipsoid":  # half as deep as its radius: stretched about the origin
        return f"0 0 {2 * level} {inner} ball 0.5 stretch"
    if given["shape"] == "cone":
        tip = next(sizes(port)[1] for port in design["ports"] if port["in"] == end and port["at"]["radius"] == 0)
        deep = (inner - tip) / math.tan(math.radians(given["angle"] / 2))
        return f"{inner} {level} start {tip} {level + way * deep} line turned"
    crown, knuckle = given["crown_radius"], given["knuckle_radius"]
    side = inner - knuckle
    up = math.sqrt((crown - knuckle) ** 2 - side ** 2)
    touch = math.asin(side / (crown - knuckle))
    half = (touch + math.pi / 2) / 2

    def on_knuckle(a):  # from the axis' direction
        return f"{side + knuckle * math.sin(a)} {level + way * knuckle * math.cos(a)}"

    def on_crown(a):
        return f"{crown * math.sin(a)} {level + way * (crown * math.cos(a) - up)}"

    return (f"{inner} {level} start {on_knuckle(half)} {on_knuckle(touch)} arc "
            f"{on_crown(touch / 2)} 0 {level + way * (crown - up)} arc turned")


def design_of(folder):
    return yaml.safe_load((HERE / f"{folder.name}.yaml").read_text())


def least_radius(design):
    return min(port["tube"]["outside_diameter"] / 2 - port["tube"]["wall"] for port in design["ports"])


def program():
    source, binary = HERE / "kernel.cpp", HERE.parent / "bin/kernel"
    if not binary.exists() or binary.stat().st_mtime < source.stat().st_mtime:
        binary.parent.mkdir(exist_ok=True)
        subprocess.run(["g++", "-O1", "-std=c++17", "-isystem/usr/include/opencascade", source, "-o", binary,
                        *[f"-l{library}" for library in LIBRARIES]], check=True)
    return binary


def ask(texts):
    run = subprocess.run([program()], input="\n".join(texts) + "\n", capture_output=True, text=True, check=True)
    return [float(line) for line in run.stdout.split()]


def cylinder(origin, way, radius, length):
    return " ".join(f"{v:.17g}" for v in [*origin, *way, radius, length]) + " cylinder"


def upright(low, radius, high):
    return cylinder((0, 0, low), (0, 0, 1), radius, high - low)


def axis(port, shell):
    """Where the port's axis meets the shell's outside, and the way it leaves."""
    at = port["at"]
    angle, tilt, offset = math.radians(at.get("angle", 0)), math.radians(at.get("tilt", 0)), at.get("offset", 0)
    forward = math.sqrt(outer_at(shell, at["height"]) ** 2 - offset ** 2)
    out, side = (math.cos(angle), math.sin(angle)), (-math.sin(angle), math.cos(angle))
    foot = (forward * out[0] + offset * side[0], forward * out[1] + offset * side[1], at["height"])
    return foot, (math.cos(tilt) * out[0], math.cos(tilt) * out[1], math.sin(tilt))


def along(foot, way, s):
    return tuple(f + s * w for f, w in zip(foot, way))


def questions(design):
    shell = design["shell"]
    height = shell["height"]
    metal = f"{body(shell, 0, height)} {body(shell, -FAR, height + FAR, across(shell))} cut"
    for port in design["ports"]:
        if port["in"] == "shell":
            metal += f" {opening(port, shell)} cut"
            yield from branch(port, design)
        else:
            yield from on_head(port, design)
    yield "volume shell", f"{metal} volume"
    yield "area shell", f"{metal} area"
    for end in ("top", "bottom"):
        if design[end]["shape"] not in ("flat", "hemisphere"):
            continue  # its metal lies between parallel curves, which the kernel does not draw exactly
        yield f"volume {end}", f"{head(end, design)} volume"
        yield f"area {end}", f"{head(end, design)} area"


def sizes(port):
    tube = port["tube"]
    outside = tube["outside_diameter"] / 2
    bore = outside - tube["wall"]
    return outside, bore, bore if port["joint"] == "set_on" else outside + port["clearance"]


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


def on_head(port, design):
    """Plain rings: the kernel only confirms them."""
    outside, bore, _ = sizes(port)
    if port["in"] == "top" and design["top"]["shape"] == "flat":
        low = -port.get("inside_length", 0) - (design["top"]["thickness"] if port["joint"] == "set_in" else 0)
        tube = f"{upright(low, outside, port['length'])} {upright(low - FAR, bore, port['length'] + FAR)} cut"
        yield f"volume {port['name']}", f"{tube} volume"


def head(end, design):
    given, shell = design[end], design["shell"]
    outer = shell["outside_diameter"] / 2
    holes = [port for port in design["ports"] if port["in"] == end]
    if given["shape"] == "hemisphere":
        level = 0 if end == "bottom" else shell["height"]
        half = upright(level - 2 * outer, 2 * outer, level) if end == "bottom" else upright(level, 2 * outer, level + 2 * outer)
        solid = f"0 0 {level} {outer} ball 0 0 {level} {outer - given['wall']} ball cut {half} common"
    else:
        # An inset plate passes the narrowest of the bore that it stands in.
        deep = given["thickness"] + given.get("recess", 0)
        levels_in = (0, deep) if end == "bottom" else (shell["height"] - deep, shell["height"])
        radius = given.get("outside_diameter", 2 * outer) / 2 if given["seat"] == "overlay" \
            else min(outer_at(shell, level) for level in levels_in) - across(shell) - given["clearance"]
        solid = upright(0, radius, given["thickness"])
    for port in holes:
        angle = math.radians(port["at"].get("angle", 0))
        x, y = port["at"]["radius"] * math.cos(angle), port["at"]["radius"] * math.sin(angle)
        low, high = (-FAR, given["thickness"] + FAR) if given["shape"] == "flat" \
            else (level - 2 * outer, level) if end == "bottom" else (level, level + 2 * outer)
        solid += f" {cylinder((x, y, low), (0, 0, 1), sizes(port)[2], high - low)} cut"
    for port in design["ports"]:
        if over(port, design) == end:
            solid += f" {opening(port, shell)} cut"
    return solid


if __name__ == "__main__":
    run_reader(check)
