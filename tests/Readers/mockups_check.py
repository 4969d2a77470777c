#!/usr/bin/python3
"""Reads the random mock-ups that the tests kept (VESSEL_MOCKUPS=folder): mockups_check.py folder"""
import pathlib
import sys

from checks import Checks
from solid_check import check_mesh, run_mesh_check


def main():
    folder = pathlib.Path(sys.argv[1])
    files = sorted(folder.glob("*.stl"))
    checks = Checks()
    checks.that(len(files) >= 50, folder.name, f"only {len(files)} mock-ups")
    for mesh in run_mesh_check(files):
        where = pathlib.Path(mesh["file"]).name
        if checks.that("error" not in mesh, where, mesh.get("error")):
            check_mesh(mesh, where, checks, bodies_may_touch=False, may_have_needles=where.endswith("-rough.stl"))
    rough = [file for file in files if file.name.endswith("-rough.stl")]
    checks.that(len(rough) <= len(files) / 50, folder.name, f"{len(rough)} of {len(files)} pieces may have needles, and are told to")
    if (folder / "count").exists():
        print((folder / "count").read_text().strip())
    sys.exit(checks.report())


if __name__ == "__main__":
    main()
