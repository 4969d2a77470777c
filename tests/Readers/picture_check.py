#!/usr/bin/python3
"""Opens every PNG with PIL: whole, of a size that passes through a message, a body on white that does not touch the edge."""
import numpy
from PIL import Image

from checks import run_reader

MOST_BYTES, LEAST_SIDE, MOST_SIDE = 150_000, 100, 1200
LEAST_SHARE, LEAST_COLOURS = 0.1, 50


def check(folder, checks):
    for file in sorted(folder.rglob("*.png")):
        where = f"{folder.name}/{file.relative_to(folder)}"
        try:
            with Image.open(file) as picture:
                pixels = numpy.asarray(picture.convert("RGB"))
        except (OSError, SyntaxError) as error:
            checks.that(False, where, f"cannot read it: {error}")
            continue
        height, width, _ = pixels.shape
        checks.that(file.stat().st_size <= MOST_BYTES and LEAST_SIDE <= min(width, height) and max(width, height) <= MOST_SIDE, where,
                    f"{width} x {height} pixels in {file.stat().st_size} bytes: no size for a message")
        drawn = (pixels != 255).any(axis=2)
        colours = len(numpy.unique(pixels.reshape(-1, 3), axis=0))
        checks.that(drawn.mean() >= LEAST_SHARE and colours >= LEAST_COLOURS, where, "shows nothing")
        checks.that(not (drawn[0].any() or drawn[-1].any() or drawn[:, 0].any() or drawn[:, -1].any()), where, "runs over the edge")


if __name__ == "__main__":
    run_reader(check)
