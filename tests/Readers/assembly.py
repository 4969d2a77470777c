"""Compares the bodies of an assembly file, of whatever format, with the summary's parts and their STLs."""
import dataclasses

import numpy

from solid_check import corners, placements


@dataclasses.dataclass
class Body:
    """In one place: a point p of its triangles stands at rotation p + origin, mm in the vessel's frame."""
    name: str
    material: str
    triangles: numpy.ndarray
    rotation: numpy.ndarray
    origin: numpy.ndarray


def volume(triangles):
    a, b, c = triangles[:, 0], triangles[:, 1], triangles[:, 2]
    return (a * numpy.cross(b, c)).sum() / 6


def check(summary, folder, bodies, tolerance, where, checks):
    """Every piece is there by name and material, with the facets of its STL, where its placement says."""
    wanted = [(part, place) for part in summary["parts"] for place in placements(part)]
    if not checks.that(len(bodies) == len(wanted), where, f"{len(bodies)} pieces, the summary has {len(wanted)}"):
        return
    for (part, place), body in zip(wanted, bodies):
        what = part["name"]
        several = part["quantity"] > 1
        checks.that(body.name == what or several and body.name.startswith(what), where, f"{what} is called {body.name}")
        checks.that(body.material == part.get("material", body.material), where, f"{what} is of {body.material}")
        stated = corners(folder / part["files"]["solid"])
        found = body.triangles.reshape(-1, 3)
        if not checks.that(len(found) == len(stated), where, f"{what} has {len(found) // 3} triangles, its STL {len(stated) // 3}"):
            continue
        off = abs(found - stated).max()
        checks.that(off < tolerance, where, f"{what} differs from its STL by {off:.3g} mm")
        moved = max(abs(body.rotation - place[:3, :3]).max(), abs(body.origin - place[:3, 3]).max())
        checks.that(moved < 1e-4, where, f"{what} stands {moved:.3g} off its placement")
