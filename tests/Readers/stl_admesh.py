#!/usr/bin/python3
"""Reads every solid of a build with admesh, which must find nothing to mend."""
import pathlib
import re
import subprocess
import tempfile

from checks import run_reader

# Its counts of what it found wrong.
NOTHING = ["Degenerate facets", "Edges fixed", "Facets removed", "Facets added", "Facets reversed", "Backwards edges"]


def check(folder, checks):
    for file in sorted([*folder.glob("solids/*.stl"), *folder.glob("mockup/*.stl")]):
        if file.name != "assembly.stl":  # bodies that touch share edges, which admesh would count as faults
            check_file(file, f"{folder.name}/{file.relative_to(folder)}", checks)


def check_file(file, where, checks):
    try:
        run = admesh(file)
    except (FileNotFoundError, subprocess.TimeoutExpired) as error:
        checks.that(False, where, f"admesh is missing or does not end: {error}")
        return
    facets = re.search(r"Number of facets\s*:\s*(\d+)", run.stdout)
    if not checks.that(run.returncode == 0 and facets and int(facets.group(1)) > 0, where, f"admesh cannot read it: {run.stderr}"):
        return
    loose = re.search(r"Total disconnected facets\s*:\s*(\d+)\s+(\d+)", run.stdout)
    checks.that(loose and loose.groups() == ("0", "0"), where, loose and loose.group(0))
    for name in NOTHING:
        counted = re.search(rf"{name}\s*:\s*(\d+)", run.stdout)
        checks.that(counted and int(counted.group(1)) == 0, where, f"admesh: {name}: {counted and counted.group(1)}")
    volume = re.search(r"Volume\s*:\s*(\S+)", run.stdout)
    checks.that(volume and float(volume.group(1)) > 0, where, f"admesh: inside out: {volume and volume.group(0)}")


def admesh(file):
    """It takes a file for text unless one of the first 128 bytes of facets is over 127, which round coordinates need not
    be; so it reads a copy whose first facet has the unused attribute set."""
    data = bytearray(file.read_bytes())
    if len(data) >= 134:
        data[132:134] = b"\xff\xff"
    with tempfile.TemporaryDirectory() as scratch:
        copy = pathlib.Path(scratch) / "copy.stl"
        copy.write_bytes(data)
        # Edges match exactly or not at all: nothing may be mended by nearness.
        return subprocess.run(["admesh", "--exact", "--normal-directions", str(copy)],
                              capture_output=True, encoding="utf-8", errors="replace", timeout=120, stdin=subprocess.DEVNULL)


if __name__ == "__main__":
    run_reader(check)
