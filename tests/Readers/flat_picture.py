#!/usr/bin/python3
"""Picture of a flat, by layer: flat_picture.py flat.dxf out.png [--width 1600]"""
import argparse

import ezdxf
from ezdxf.disassemble import recursive_decompose
from ezdxf.path import make_path
from PIL import Image, ImageDraw, ImageFont

COLOURS = {"CUT": "#111111", "BEND": "#c020c0", "MARK": "#108040", "NOTE": "#777777"}
WIDTHS = {"CUT": 2.0}
FINE = 3


def main():
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("dxf")
    options.add_argument("png")
    options.add_argument("--width", type=int, default=1600)
    given = options.parse_args()

    strokes, texts = read(ezdxf.readfile(given.dxf).modelspace())
    points = [p for _, line, _ in strokes for p in line]
    x0, y0 = (min(p[i] for p in points) for i in (0, 1))
    x1, y1 = (max(p[i] for p in points) for i in (0, 1))
    margin = 0.03 * max(x1 - x0, y1 - y0)
    scale = given.width * FINE / (x1 - x0 + 2 * margin)
    size = round(given.width * FINE), round((y1 - y0 + 2 * margin) * scale)

    def place(p):
        return (p[0] - x0 + margin) * scale, size[1] - (p[1] - y0 + margin) * scale

    image = Image.new("RGB", size, "white")
    draw = ImageDraw.Draw(image)
    closed = sorted((line for layer, line, shut in strokes if layer == "CUT" and shut), key=area, reverse=True)
    for i, line in enumerate(closed):  # the sheet, and the holes in it
        draw.polygon([place(p) for p in line], fill="#eef1f4" if i == 0 else "white")
    for layer, line, _ in strokes:
        draw.line([place(p) for p in line], fill=COLOURS.get(layer, "#c000c0"), width=round(WIDTHS.get(layer, 1) * FINE), joint="curve")
    for layer, text, at, height in texts:
        draw.text(place(at), text, fill=COLOURS.get(layer, "#c000c0"), font=font(height * scale), anchor="ls")
    image.resize((size[0] // FINE, size[1] // FINE), Image.LANCZOS).save(given.png, optimize=True)


def read(space):
    """Strokes (layer, points, closed) and texts (layer, text, place, height)."""
    strokes, texts = [], []
    for e in recursive_decompose(space):
        if e.dxftype() == "TEXT":
            texts.append((e.dxf.layer, e.dxf.text, e.dxf.insert, e.dxf.height))
        elif e.dxftype() == "MTEXT":
            texts.append((e.dxf.layer, e.plain_text(), e.dxf.insert, e.dxf.char_height))
        else:
            path = make_path(e)
            line = [(p.x, p.y) for p in path.flattening(0.02)]
            strokes.append((e.dxf.layer, line, path.is_closed))
    return strokes, texts


def area(line):
    return abs(sum(p[0] * q[1] - q[0] * p[1] for p, q in zip(line, line[1:] + line[:1]))) / 2


def font(height):
    try:
        return ImageFont.truetype("DejaVuSans.ttf", max(8, round(height * 1.3)))
    except OSError:
        return ImageFont.load_default()


if __name__ == "__main__":
    main()
