#!/usr/bin/python3
"""Checks every STL of a build with CGAL (mesh_check.cpp) and against the figures and flats of the summary."""
import json
import math
import pathlib
import subprocess

import numpy

from checks import run_reader, summary_of

HERE = pathlib.Path(__file__).resolve().parent
LEAST_ALTITUDE = 0.001  # mm; a thinner triangle loses its direction in single precision
VOLUME = 1e-5           # relative; rounding to floats moves a wall of 1 mm by about 1e-5 of its thickness at 100 mm


def check(folder, checks):
    summary = summary_of(folder)
    files = sorted([*folder.glob("solids/*.stl"), *folder.glob("mockup/*.stl")])
    checks.that(files, folder.name, "no STL at all")
    try:
        read = {r["file"]: r for r in run_mesh_check(files)}
    except (OSError, subprocess.CalledProcessError, ValueError) as error:
        checks.that(False, folder.name, f"mesh_check is missing or fails: {error}")
        return
    for file in files:
        name = str(file.relative_to(folder))
        where = f"{folder.name}/{name}"
        mesh = read.get(str(file), {"error": "mesh_check says nothing of it"})
        if not checks.that("error" not in mesh, where, mesh.get("error")):
            continue
        check_mesh(mesh, where, checks, bodies_may_touch=file.name == "assembly.stl")
        for part in summary["parts"]:
            if part["files"].get("solid") == name:
                check_part(part, mesh, where, checks)
    assembly = folder / "solids/assembly.stl"
    if assembly in files and all((folder / p["files"]["solid"]).exists() for p in summary["parts"] if p.get("solid")):
        check_assembly(summary, folder, read[str(assembly)], checks)


def program():
    """Compiled when it is older than its source: about 25 s."""
    source, binary = HERE / "mesh_check.cpp", HERE / "bin/mesh_check"
    if not binary.exists() or binary.stat().st_mtime < source.stat().st_mtime:
        binary.parent.mkdir(exist_ok=True)
        subprocess.run(["g++", "-O2", "-std=c++17", source, "-o", binary, "-lgmp", "-lmpfr"], check=True)
    return binary


def run_mesh_check(files):
    run = subprocess.run([program(), *files], capture_output=True, encoding="utf-8", check=True)
    return [json.loads(line) for line in run.stdout.splitlines()]


def check_mesh(mesh, where, checks, bodies_may_touch, may_have_needles=False):
    checks.that(mesh["triangles"] > 0, where, "empty")
    checks.that(mesh["open_edges"] == 0, where, f"{mesh['open_edges']} edges are not used once in each sense")
    checks.that(mesh["degenerate"] == 0 or may_have_needles, where, f"{mesh['degenerate']} degenerate triangles")
    checks.that(mesh["wrong_normals"] == 0, where, f"{mesh['wrong_normals']} normals disagree with their triangles")
    checks.that(mesh["volume_mm3"] > 0, where, "inside out")
    checks.that(mesh["least_altitude_mm"] >= LEAST_ALTITUDE or may_have_needles, where, f"least altitude of a triangle {mesh['least_altitude_mm']:.3g} mm")
    if not bodies_may_touch:
        checks.that(mesh["manifold"] and mesh["closed"], where, "not a closed manifold")
        checks.that(not mesh["self_intersects"], where, "crosses itself")
        checks.that(mesh["outward"], where, "not outward oriented")
        checks.that(mesh["components"] == 1, where, f"{mesh['components']} components")


def check_part(part, mesh, where, checks):
    solid = part["solid"]
    checks.that(solid["closed"] is True, where, "the summary calls it open")
    checks.that(mesh["triangles"] == solid["triangles"], where, f"{mesh['triangles']} triangles, {solid['triangles']} stated")
    genus = (2 - mesh["euler"]) / 2
    checks.that(genus == solid["genus"], where, f"genus {genus:g}, {solid['genus']} stated")
    checks.near(mesh["volume_mm3"], solid["volume_mm3"], VOLUME * solid["volume_mm3"], where, "volume")
    checks.near(mesh["area_mm2"], solid["area_mm2"], VOLUME * solid["area_mm2"], where, "area")
    if part.get("flat") and part["files"].get("flat"):
        check_against_flat(part, mesh["volume_mm3"], where, checks)


def check_against_flat(part, volume, where, checks):
    """Metal is neither won nor lost: what the flat holds, the solid holds. The gap of a rolled shell is welded up."""
    flat, solid, development = part["flat"], part["solid"], part["flat"]["development"]
    area, thickness = flat["area_mm2"], part["thickness_mm"]
    # Each outline in a face is drawn inside its curve by at most the chord.
    holes = max(0.0, flat["cut_length_mm"] - 2 * (flat["width_mm"] + flat["height_mm"]))
    if development["kind"] == "rolled":
        radius = development["radius_mm"]
        area += (development["gap_mm"] - 2 * development.get("trim_mm", 0)) * flat["height_mm"]
        area *= (radius + (0.5 - development["k"]) * thickness) / radius  # the middle of the wall, not the neutral line
        # A polygon of chord c in a circle of radius r lacks 4 c / 3 r of its area.
        relative = 2 * solid["chord_mm"] / radius + solid["chord_mm"] * holes / area
    elif development["kind"] == "folded":
        # The middle of the sheet is longer than its neutral line by (0.5 - k) of the thickness for each radian; holes lie beside the bends.
        along = flat["height_mm"] if development["across"] == "x" else flat["width_mm"]
        area += along * thickness * sum((0.5 - b["k"]) * math.radians(abs(b["angle_deg"])) for b in development["bends"])
        relative = solid["chord_mm"] * flat["cut_length_mm"] / area
    elif development["kind"] == "plane":
        relative = solid["chord_mm"] * flat["cut_length_mm"] / area
    else:
        return
    if flat["left_to_cut"]:
        checks.that(0 < volume < area * thickness, where, "what is cut later leaves no less metal than the flat has")
        return
    checks.near(volume, area * thickness, relative * area * thickness, where, "volume against flat area x thickness")


def check_assembly(summary, folder, mesh, checks):
    """All pieces are there, and where the placements say."""
    where = f"{folder.name}/solids/assembly.stl"
    low, high, triangles, volume = [], [], 0, 0.0
    for part in summary["parts"]:
        if not part.get("solid"):
            continue
        points = corners(folder / part["files"]["solid"])
        for placement in placements(part):
            placed = points @ placement[:3, :3].T + placement[:3, 3]
            low.append(placed.min(axis=0))
            high.append(placed.max(axis=0))
            triangles += part["solid"]["triangles"]
            volume += part["solid"]["volume_mm3"]
    found = corners(folder / "solids/assembly.stl")
    off = max(abs(found.min(axis=0) - numpy.min(low, axis=0)).max(), abs(found.max(axis=0) - numpy.max(high, axis=0)).max())
    checks.that(off < 1e-3, where, f"its box differs from that of the placed parts by {off:.3g} mm")
    checks.that(mesh.get("triangles") == triangles, where, f"{mesh.get('triangles')} triangles, the parts have {triangles}")
    checks.near(mesh.get("volume_mm3", 0), volume, VOLUME * volume, where, "volume against the sum of the parts")


def corners(file):
    """Of all triangles of a binary STL, three rows each."""
    data = numpy.frombuffer(file.read_bytes(), dtype=numpy.uint8, offset=84)
    return data.reshape(-1, 50)[:, 12:48].copy().view("<f4").reshape(-1, 3).astype(float)


def placements(part):
    return numpy.array(part["placement"], dtype=float).reshape(-1, 4, 4)


if __name__ == "__main__":
    run_reader(check)
