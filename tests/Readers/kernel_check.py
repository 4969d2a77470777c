#!/usr/bin/python3
"""Volumes, areas and weld lengths of kernel/*.yaml against Open CASCADE (kernel/kernel.cpp), from the sizes in the design alone:
kernel_check.py <folder>..., each the output of the design of its name."""
import math
import pathlib
import subprocess

import yaml

from checks import run_reader, summary_of

HERE = pathlib.Path(__file__).resolve().parent / "kernel"
LIBRARIES = ["TKBO", "TKPrim", "TKTopAlgo", "TKBRep", "TKGeomBase", "TKG3d", "TKG2d", "TKGeomAlgo", "TKMath", "TKernel"]
EXACT = 2e-6  # relative: the kernel follows an intersection curve to 1e-7 mm or so, along lines that graze to less
FAR = 10.0    # mm beyond a face, so that a cut passes it


def check(folder, checks):
    design = design_of(folder)
    summary = summary_of(folder)
    parts = {part["name"]: part for part in summary["parts"]}
    asked = list(questions(design))
    for (what, _), answer in zip(asked, ask([text for _, text in asked])):
        kind, name = what.split(" ", 1)
        where = f"{folder.name}/{name}"
        if kind == "weld":
            stated = next(w["length_mm"] for w in summary["welds"] if w["name"].startswith(f"{name} to "))
            checks.near(stated, answer, EXACT * answer, where, "length of the weld")
        elif kind == "volume":
            checks.near(parts[name]["volume_mm3"], answer, EXACT * answer, where, "volume")
        else:
            solid = parts[name]["solid"]
            # A facet lies at most the chord off its surface; on a curved one it then spans sqrt(8 chord / curvature), and its
            # area is short by the same share as a polygon's girth is: 2/3 chord / radius, of the least radius here.
            share = 2 * solid["chord_mm"] / least_radius(design)
            checks.near(solid["area_mm2"], answer, share * answer, where, "area of the mesh")
            checks.near(solid["volume_mm3"], parts[name]["volume_mm3"], solid["chord_mm"] * answer, where, "volume of the mesh")


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
    radius = shell["outside_diameter"] / 2
    forward = math.sqrt(radius ** 2 - offset ** 2)
    out, side = (math.cos(angle), math.sin(angle)), (-math.sin(angle), math.cos(angle))
    foot = (forward * out[0] + offset * side[0], forward * out[1] + offset * side[1], at["height"])
    return foot, (math.cos(tilt) * out[0], math.cos(tilt) * out[1], math.sin(tilt))


def along(foot, way, s):
    return tuple(f + s * w for f, w in zip(foot, way))


def questions(design):
    shell = design["shell"]
    outer, wall, height = shell["outside_diameter"] / 2, shell["wall"], shell["height"]
    metal = f"{upright(0, outer, height)} {upright(-FAR, outer - wall, height + FAR)} cut"
    for port in design["ports"]:
        if port["in"] == "shell":
            metal += f" {opening(port, shell)} cut"
            yield from branch(port, shell)
        else:
            yield from on_head(port, design)
    yield "volume shell", f"{metal} volume"
    yield "area shell", f"{metal} area"
    for end in ("top", "bottom"):
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
    return math.sqrt((shell["outside_diameter"] / 2) ** 2 - port["at"].get("offset", 0) ** 2) / math.cos(tilt)


def opening(port, shell):
    """Drilled along the port's axis, from the middle of the vessel outward."""
    foot, way = axis(port, shell)
    inward = reach(port, shell)
    return cylinder(along(foot, way, -inward), way, sizes(port)[2], inward + port["length"])


def branch(port, shell):
    outside, bore, _ = sizes(port)
    foot, way = axis(port, shell)
    inward = reach(port, shell)
    whole = upright(-400, shell["outside_diameter"] / 2, shell["height"] + 400)
    if port["joint"] == "set_on":
        start = along(foot, way, -inward)
        tube = f"{cylinder(start, way, outside, inward + port['length'])} {cylinder(start, way, bore, inward + port['length'] + FAR)} cut {whole} cut"
        if port["cut"] == "ground":
            yield f"volume {port['name']}", f"{tube} volume"
            yield f"area {port['name']}", f"{tube} area"
    far = inward + 2 * port["length"] + 4 * outside
    yield f"weld {port['name']}", f"{cylinder(along(foot, way, -inward), way, outside, far)} {whole} meet"


def on_head(port, design):
    """Plain rings: the kernel only confirms them."""
    outside, bore, _ = sizes(port)
    if port["in"] == "top":
        low = -port.get("inside_length", 0) - (design["top"]["thickness"] if port["joint"] == "set_in" else 0)
        tube = f"{upright(low, outside, port['length'])} {upright(low - FAR, bore, port['length'] + FAR)} cut"
        yield f"volume {port['name']}", f"{tube} volume"


def head(end, design):
    given, shell = design[end], design["shell"]
    outer = shell["outside_diameter"] / 2
    holes = [port for port in design["ports"] if port["in"] == end]
    if given["shape"] == "hemisphere":
        solid = f"0 0 0 {outer} ball 0 0 0 {outer - given['wall']} ball cut {upright(-2 * outer, 2 * outer, 0)} common"
    else:
        radius = outer if given["seat"] == "overlay" else outer - shell["wall"] - given["clearance"]
        solid = upright(0, radius, given["thickness"])
    for port in holes:
        angle = math.radians(port["at"].get("angle", 0))
        x, y = port["at"]["radius"] * math.cos(angle), port["at"]["radius"] * math.sin(angle)
        low, high = (-2 * outer, 0) if given["shape"] == "hemisphere" else (-FAR, given["thickness"] + FAR)
        solid += f" {cylinder((x, y, low), (0, 0, 1), sizes(port)[2], high - low)} cut"
    return solid


if __name__ == "__main__":
    run_reader(check)
