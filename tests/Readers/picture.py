#!/usr/bin/python3
"""Shaded picture of STL files: the whole in front view from above, and cut in half.

  picture.py out.png --summary out/<design>/summary.json      every part of a build, where it is placed
  picture.py out.png part.stl=#8899aa other.stl               any files, with or without a colour
"""
import argparse
import json
import pathlib

import numpy
from PIL import Image

from raster import Scene, View

PALETTE = {"shell": "#9db4c8", "lid": "#c9ced3", "head": "#b4c0a8", "branch": "#d9a066", "elbow": "#c9a27c", "bung": "#c77b58",
           "bracket": "#8f86a8", "cap": "#d8c46a", "sleeve": "#7fb0a4", "disc": "#b98fa0"}
OTHERS = ["#9db4c8", "#d9a066", "#b4c0a8", "#c77b58", "#8f86a8", "#d8c46a", "#7fb0a4", "#b98fa0"]


def main():
    options = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("png", type=pathlib.Path)
    options.add_argument("stl", nargs="*", help="file, or file=#rrggbb")
    options.add_argument("--summary", type=pathlib.Path, action="append", default=[])
    options.add_argument("--view", choices=["whole", "section", "both"], default="both")
    options.add_argument("--azimuth", type=float, default=-50, help="degrees, of the viewer")
    options.add_argument("--elevation", type=float, default=28, help="degrees, of the viewer")
    options.add_argument("--cut", type=float, default=None, help="azimuth of the section's normal; by default 30 degrees off the viewer's")
    options.add_argument("--size", type=int, nargs=2, default=[900, 1100], help="pixels of each view")
    options.add_argument("--fine", type=int, default=3, help="samples a pixel, each way")
    given = options.parse_args()

    bodies = [body for summary in given.summary for body in bodies_of(summary)]
    for i, text in enumerate(given.stl):
        name, _, colour = text.partition("=")
        bodies.append((triangles_of(pathlib.Path(name)), colour or OTHERS[i % len(OTHERS)]))
    if not bodies:
        options.error("nothing to show")

    scene = Scene([(t, rgb(c)) for t, c in bodies])
    view = View(given.azimuth, given.elevation, given.size, given.fine)
    cut = given.azimuth + 30 if given.cut is None else given.cut
    images = []
    if given.view != "section":
        images.append(scene.render(view))
    if given.view != "whole":
        images.append(scene.render(view, section=cut))
    Image.fromarray(numpy.concatenate(images, axis=1)).save(given.png, optimize=True)


def bodies_of(summary):
    for i, part in enumerate(json.loads(summary.read_text(encoding="utf-8"))["parts"]):
        triangles = triangles_of(summary.parent / part["files"]["solid"])
        for frame in numpy.array(part["placement"], dtype=float).reshape(-1, 4, 4):
            yield triangles @ frame[:3, :3].T + frame[:3, 3], PALETTE.get(part["kind"], OTHERS[i % len(OTHERS)])


def triangles_of(file):
    data = numpy.frombuffer(file.read_bytes(), dtype=numpy.uint8, offset=84).reshape(-1, 50)
    return data[:, 12:48].copy().view("<f4").reshape(-1, 3, 3).astype(float)


def rgb(text):
    return numpy.array([int(text[i:i + 2], 16) for i in (1, 3, 5)]) / 255


if __name__ == "__main__":
    main()
