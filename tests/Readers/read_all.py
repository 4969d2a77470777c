#!/usr/bin/python3
"""Runs every reader over the folders of finished builds: read_all.py [--dxf AC1009] [--only reader,...] out/a out/b ..."""
import argparse
import concurrent.futures
import functools
import pathlib
import sys

import dxf_audit
import dxf_opens
import glb_check
import paper_check
import picture_check
import solid_check
import stl_admesh
import summary_check
import threemf_check
from checks import Checks

READERS = {"summary_check": summary_check.check, "dxf_audit": dxf_audit.check, "dxf_opens": dxf_opens.check,
           "stl_admesh": stl_admesh.check, "solid_check": solid_check.check, "threemf_check": threemf_check.check,
           "glb_check": glb_check.check, "paper_check": paper_check.check, "picture_check": picture_check.check}


def read(folder, names=tuple(READERS), version="AC1015"):
    """A reader that breaks has failed, and the others still run."""
    checks = Checks()
    for name in names:
        reader = READERS[name]
        if name == "dxf_audit":
            reader = functools.partial(reader, version=version)
        try:
            reader(folder, checks)
        except Exception as error:  # whatever the file did to it
            checks.that(False, folder.name, f"{name} breaks: {type(error).__name__}: {error}")
    return checks


def main():
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--dxf", default="AC1015", help="version that the drawings must have")
    options.add_argument("--only", default=",".join(READERS))
    options.add_argument("folders", nargs="+", type=pathlib.Path)
    given = options.parse_args()
    names = given.only.split(",")
    if "solid_check" in names:
        solid_check.program()  # compiled once, before the folders are read side by side
    total = Checks()
    with concurrent.futures.ProcessPoolExecutor() as pool:
        for checks in pool.map(functools.partial(read, names=names, version=given.dxf), given.folders):
            total.passed += checks.passed
            total.failures += checks.failures
    sys.exit(total.report())


if __name__ == "__main__":
    main()
