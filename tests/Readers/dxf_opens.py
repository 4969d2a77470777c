#!/usr/bin/python3
"""Opens every DXF of a build with GDAL's ogrinfo and counts the entities against ezdxf."""
import re
import subprocess

import ezdxf

from checks import run_reader


def check(folder, checks):
    for file in sorted(folder.rglob("*.dxf")):
        where = f"{folder.name}/{file.relative_to(folder)}"
        try:
            run = subprocess.run(["ogrinfo", "-al", "-so", str(file)], capture_output=True, encoding="utf-8")
        except FileNotFoundError:
            checks.that(False, where, "ogrinfo is missing")
            continue
        found = re.search(r"Feature Count: (\d+)", run.stdout)
        opened = checks.that(run.returncode == 0 and found, where, f"ogrinfo cannot open it: {run.stderr.strip()}")
        complaints = re.findall(r"(?:ERROR|Warning) \d+:.*", run.stderr + run.stdout)
        checks.that(not complaints, where, f"ogrinfo complains: {complaints}")
        if opened:
            count = int(found.group(1))
            checks.that(count > 0, where, "ogrinfo finds nothing in it")
            expected = len(ezdxf.readfile(file).modelspace())
            checks.that(count == expected, where, f"ogrinfo counts {count} entities, ezdxf {expected}")


if __name__ == "__main__":
    run_reader(check)
