"""Writes a small sound build by hand, its figures from closed forms, for the self-test of the readers."""
import hashlib
import json
import math
import re
import struct
import zipfile

import ezdxf
import numpy
from PIL import Image

CHORD = 0.05
LAYERS = {"CUT": 7, "BEND": 6, "MARK": 3, "NOTE": 8}
GAP, NEUTRAL, HEIGHT = 1.2, 49.0, 80.0
GIRTH = 2 * math.pi * NEUTRAL - GAP


def write(folder, version="R2000"):
    for name in ("flats", "wraps", "solids", "holes", "templates", "pictures", "section"):
        (folder / name).mkdir(parents=True)
    drawing(folder / "flats/shell.dxf", version, draw_rectangle(GIRTH, HEIGHT))
    drawing(folder / "flats/lid.dxf", version, draw_lid)
    drawing(folder / "wraps/inlet.dxf", version, draw_rectangle(32 * math.pi, 50))
    parts = [
        part("shell", "shell", 2, 1, frame(0, 0), {"flat": "flats/shell.dxf"}, rectangle(GIRTH, HEIGHT, "rolled", NEUTRAL, GAP)),
        part("lid", "lid", 3, 1, frame(80, 30), {"flat": "flats/lid.dxf", "holes": "holes/lid.csv"}, lid()),
        part("inlet", "branch", 2, 2, frame(100, 0) + frame(-60, 0), {"wrap": "wraps/inlet.dxf", "template": "templates/inlet.pdf"},
             rectangle(32 * math.pi, 50, "wrapped", 16, 0)),
    ]
    bodies = []
    for p, mesh in zip(parts, (ring(50, 48, HEIGHT), ring(47.8, 15, 3), ring(16, 14, 50))):
        triangles = mesh.astype("<f4").astype(float)
        write_stl(folder / p["files"]["solid"], triangles)
        p["solid"] = solid(triangles)
        p["mass_g"] = round(p["solid"]["volume_mm3"] * 0.00793, 6)
        for placement in numpy.array(p["placement"]).reshape(-1, 4, 4):
            bodies.append(triangles @ placement[:3, :3].T + placement[:3, 3])
    write_stl(folder / "solids/assembly.stl", numpy.concatenate(bodies))
    write_3mf(folder / "solids/assembly.3mf", parts, folder)
    write_3mf(folder / "section/assembly.3mf", parts, folder)
    write_glb(folder / "solids/assembly.glb", parts, folder)
    write_template(folder / "templates/inlet.pdf")
    write_pdf(folder / "drill-sheets.pdf", "BT /F 9 Tf 20 800 Td (lid: drill sheet) Tj 0 -20 Td (1 0.00 0.00 30.00 bore, of outlet) Tj ET")
    write_pdf(folder / "as-built.pdf", "BT /F 9 Tf 20 800 Td (inlet, lid) Tj 0 -20 Td (plug M14x1.5) Tj 0 -20 Td (lid to shell, all along) Tj ET")
    write_pdf(folder / "drawing.pdf", "BT /F 9 Tf 20 80 Td (1 shell) Tj 0 -20 Td (2 lid) Tj 0 -20 Td (3 inlet) Tj ET", "1190.5512 841.8898")
    (folder / "drawing.svg").write_text('<svg xmlns="http://www.w3.org/2000/svg" width="420mm" height="297mm">'
                                        + "".join(f'<path aria-label="{word}" d="M0 0L1 1"/>' for word in ("shell", "lid", "inlet")) + "</svg>\n")
    (folder / "holes/lid.csv").write_text("number,purpose,x_mm,y_mm,diameter_mm\n1,\"bore, of outlet\",0,0,30\n")
    (folder / "welds.csv").write_text("name,length_mm\nlid,301.5\ninlet,104.25\n")
    write_picture(folder / "pictures/isometric.png")
    (folder / "report.html").write_text("<!doctype html><html><body><p>Sample</p><svg><use href='#a'/></svg></body></html>\n")
    save(folder, "summary.json", summary(parts))
    seal(folder)


def write_picture(file, box=(30, 30, 170, 270), size=(200, 300)):
    """A shaded box on white."""
    picture = Image.new("RGB", size, "white")
    for x in range(box[0], box[2]):
        picture.paste((x, 200 - x // 2, 90), (x, box[1], x + 1, box[3]))
    picture.save(file)


def seal(folder):
    """Writes the manifest anew."""
    files = sorted(f for f in folder.rglob("*") if f.is_file() and f.name != "manifest.json")
    save(folder, "manifest.json", {"schema": 1, "files": [
        {"path": f.relative_to(folder).as_posix(), "bytes": f.stat().st_size, "sha256": hashlib.sha256(f.read_bytes()).hexdigest()} for f in files]})


def save(folder, name, value):
    (folder / name).write_text(json.dumps(value, indent=1) + "\n", encoding="utf-8")


def summary(parts):
    welds = [{"name": "lid", "between": ["shell", "lid"], "length_mm": 301.5, "leg_mm": {"min": 2, "max": 2}, "filler_g": 7.1, "arc_min": 3.25},
             {"name": "inlet", "between": ["shell", "inlet"], "length_mm": 104.25, "leg_mm": {"min": 2, "max": 2.5}, "filler_g": 2.4, "arc_min": 1.5}]
    return {"schema": 1, "options": {"paper": "a4", "paper_thickness_mm": 0.1}, "parts": parts, "welds": welds, "findings": [],
            "section": {"pieces": [{"name": p["name"]} for p in parts for _ in range(p["quantity"])]},
            "mockup": {"names": "raised", "marks": [{"text": "W1", "letter_height_mm": None, "fields": 2}, {"text": "inlet", "letter_height_mm": 5.5, "fields": 17}],
                       "left_out": [{"text": "outlet", "because": "no room"}]},
            "bought": [{"name": "packing", "mass_g": 12.5, "volume_ml": 200}, {"name": "fitting", "mass_g": None, "volume_ml": None}],
            "plan": {"set_up": [{"what": "inlet"}], "leak_test": {"blanks": [{"port": "inlet", "blank": "plug M14x1.5"}],
                                                                  "points": [{"where": "W1", "what": "lid to shell, all along"}]}},
            "totals": {"weld_length_mm": 405.75, "filler_g": 9.5, "arc_min": 4.75, "job_min": {"low": 30, "likely": 45, "high": 90},
                       "mass_g": round(12.5 + sum(p["mass_g"] * p["quantity"] for p in parts), 6)}}


def part(name, kind, thickness, quantity, placement, files, flat):
    return {"id": name, "name": name, "kind": kind, "thickness_mm": thickness, "quantity": quantity, "placement": placement,
            "files": {**files, "solid": f"solids/{name}.stl"}, "flat": flat}


def frame(z, degrees):
    c, s = (round(f(math.radians(degrees)), 6) for f in (math.cos, math.sin))
    return [[[c, 0 - s, 0, 0], [s, c, 0, 0], [0, 0, 1, z], [0, 0, 0, 1]]]


def flat(width, height, area, length, holes, entities, development):
    return {"width_mm": round(width, 6), "height_mm": height, "area_mm2": round(area, 6), "cut_length_mm": round(length, 6), "pierces": holes + 1,
            "holes": holes, "left_to_cut": 0, "development": development, "fit": {"tolerance_mm": 0.01, "deviation_mm": 0, "entities": entities}}


def rectangle(width, height, kind, radius, gap):
    return flat(width, height, width * height, 2 * (width + height), 0, 4,
                {"kind": kind, "radius_mm": radius, "k": 0.5, "seam_deg": 180, "sheets": 1, "gap_mm": gap})


def lid():
    return flat(95.6, 95.6, math.pi * (47.8 ** 2 - 15 ** 2), 2 * math.pi * (47.8 + 15), 1, 3, {"kind": "plane"})


def draw_rectangle(width, height):
    def draw(space, polyline):
        polyline([(0, 0, 0), (width, 0, 0), (width, height, 0), (0, height, 0)], "CUT")
        space.add_line((width / 2, 0), (width / 2, height), {"layer": "MARK"})
    return draw


def draw_lid(space, polyline):
    space.add_circle((0, 0), 15, {"layer": "CUT"})
    polyline([(-47.8, 0, 1), (47.8, 0, 1)], "CUT")
    space.add_line((-40, 0), (-20, 0), {"layer": "MARK"})
    space.add_text("outside face up", dxfattribs={"layer": "NOTE", "height": 3})


def drawing(file, version, draw):
    document = ezdxf.new(version)
    document.header["$INSUNITS"] = 4
    for name, colour in LAYERS.items():
        document.layers.add(name, color=colour)
    space = document.modelspace()
    if version == "R12":
        def polyline(points, layer):
            space.add_polyline2d(points, format="xyb", close=True, dxfattribs={"layer": layer})
    else:
        def polyline(points, layer):
            space.add_lwpolyline(points, format="xyb", close=True, dxfattribs={"layer": layer})
    draw(space, polyline)
    store(document, file)


def store(document, file):
    """ezdxf marks unset extents by 1e+20; our files carry no exponents."""
    document.saveas(file)
    data = re.sub(rb"(?m)^( *-?)1e\+20(\r?)$", rb"\g<1>100000.0\2", file.read_bytes())
    file.write_bytes(data)


def ring(outer, inner, height):
    """Triangles of a pipe, n x 3 x 3."""
    count = math.ceil(math.pi / math.acos(1 - CHORD / outer))
    angles = numpy.arange(count) * 2 * math.pi / count

    def circle(radius, z):
        return numpy.stack([radius * numpy.cos(angles), radius * numpy.sin(angles), numpy.full(count, z)], axis=1)

    def band(a, b):
        a1, b1 = numpy.roll(a, -1, axis=0), numpy.roll(b, -1, axis=0)
        return numpy.concatenate([numpy.stack([a, a1, b], axis=1), numpy.stack([b, a1, b1], axis=1)])

    low_out, high_out, low_in, high_in = circle(outer, 0), circle(outer, height), circle(inner, 0), circle(inner, height)
    return numpy.concatenate([band(low_out, high_out), band(high_out, high_in), band(high_in, low_in), band(low_in, low_out)])


def solid(triangles, genus=1):
    a, b, c = triangles[:, 0], triangles[:, 1], triangles[:, 2]
    area = numpy.linalg.norm(numpy.cross(b - a, c - a), axis=1).sum() / 2
    volume = (a * numpy.cross(b, c)).sum() / 6
    return {"volume_mm3": round(volume, 6), "area_mm2": round(area, 6), "triangles": len(triangles), "closed": True,
            "genus": genus, "chord_mm": CHORD}


def write_stl(file, triangles):
    normals = numpy.cross(triangles[:, 1] - triangles[:, 0], triangles[:, 2] - triangles[:, 0])
    lengths = numpy.linalg.norm(normals, axis=1, keepdims=True)
    normals = normals / numpy.where(lengths > 0, lengths, 1)
    rows = numpy.zeros(len(triangles), dtype=[("f", "<f4", 12), ("attribute", "<u2")])
    rows["f"] = numpy.concatenate([normals, triangles.reshape(-1, 9)], axis=1)
    file.write_bytes(b"sample".ljust(80, b"\0") + struct.pack("<I", len(triangles)) + rows.tobytes())


def indexed(triangles):
    points, index = numpy.unique(triangles.reshape(-1, 3), axis=0, return_inverse=True)
    return points, index.reshape(-1, 3)


def write_3mf(file, parts, folder):
    objects, items = [], []
    for number, p in enumerate(parts, 2):
        points, index = indexed(read_stl(folder / p["files"]["solid"]))
        objects.append(f'<object id="{number}" type="model" name="{p["name"]}" pid="1" pindex="0"><mesh><vertices>'
                       + "".join(f'<vertex x="{x:.5f}" y="{y:.5f}" z="{z:.5f}"/>' for x, y, z in points) + "</vertices><triangles>"
                       + "".join(f'<triangle v1="{a}" v2="{b}" v3="{c}"/>' for a, b, c in index) + "</triangles></mesh></object>")
        for rows in numpy.array(p["placement"]).reshape(-1, 4, 4):
            items.append(f'<item objectid="{number}" transform="{" ".join(str(v) for v in rows[:3].T.ravel())}"/>')
    model = ('<?xml version="1.0" encoding="UTF-8"?><model unit="millimeter" '
             'xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02"><resources><basematerials id="1">'
             '<base name="stainless" displaycolor="#AABBCC"/></basematerials>'
             + "\n".join(objects) + "</resources><build>" + "\n".join(items) + "</build></model>")
    pack_3mf(file, model)


def pack_3mf(file, model, time=(1980, 1, 1, 0, 0, 0)):
    package = "http://schemas.openxmlformats.org/package/2006/"
    with zipfile.ZipFile(file, "w", zipfile.ZIP_DEFLATED) as z:
        for name, text in (
                ("[Content_Types].xml", f'<Types xmlns="{package}content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-'
                 'package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>'),
                ("_rels/.rels", f'<Relationships xmlns="{package}relationships"><Relationship Target="/3D/3dmodel.model" Id="r" '
                 'Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>'),
                ("3D/3dmodel.model", model)):
            z.writestr(zipfile.ZipInfo(name, time), text)


def unpack_3mf(file):
    with zipfile.ZipFile(file) as z:
        return z.read("3D/3dmodel.model").decode()


def write_template(file):
    """One page, uncompressed: two scales, the wrap of the inlet and what it must say."""
    width = round(math.pi * 32.1, 4)
    content = (f"2.834645669 0 0 2.834645669 0 0 cm 0.2 w 10 24 m 110 24 l S 10 23 m 111.6 23 l S "
               f"20 150 m {20 + width} 150 l {20 + width} 200 l 20 200 l h S BT /F 3 Tf 10 280 Td (inlet: wrap, sheet 1 of 1) Tj "
               "0 -10 Td (MEASURE THESE SCALES FIRST) Tj ET")
    write_pdf(file, content)


def write_pdf(file, content, box="595.2756 841.8898"):
    bodies = ["<< /Type /Catalog /Pages 2 0 R >>", "<< /Type /Pages /Count 1 /Kids [3 0 R] >>",
              f"<< /Type /Page /Parent 2 0 R /MediaBox [0 0 {box}] /Resources << /Font << /F 4 0 R >> >> /Contents 5 0 R >>",
              "<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>", f"<< /Length {len(content)} >>\nstream\n{content}\nendstream",
              "<< /Title (template) >>"]
    data, starts = b"%PDF-1.7\n", []
    for number, body in enumerate(bodies, 1):
        starts.append(len(data))
        data += f"{number} 0 obj\n{body}\nendobj\n".encode()
    table = "".join(f"{start:010} 00000 n \n" for start in starts)
    file.write_bytes(data + f"xref\n0 7\n0000000000 65535 f \n{table}trailer\n<< /Size 7 /Root 1 0 R /Info 6 0 R >>\n"
                     f"startxref\n{len(data)}\n%%EOF\n".encode())


def write_glb(file, parts, folder):
    """Metres, Y up: (x, y, z) becomes (x, z, -y) / 1000."""
    turn = numpy.array([[1, 0, 0], [0, 0, 1], [0, -1, 0]])
    model = {"asset": {"version": "2.0"}, "scene": 0, "scenes": [{"nodes": []}], "nodes": [], "meshes": [], "accessors": [], "bufferViews": [],
             "materials": [{"name": "stainless", "pbrMetallicRoughness": {"baseColorFactor": [0.5, 0.5, 0.5, 1]}}]}
    binary = b""
    for number, p in enumerate(parts):
        points, index = indexed(read_stl(folder / p["files"]["solid"]))
        points = (points @ turn.T / 1000).astype("<f4") + numpy.float32(0)
        for data, accessor in ((points, {"componentType": 5126, "type": "VEC3", "count": len(points), "min": points.min(axis=0).tolist(),
                                         "max": points.max(axis=0).tolist()}),
                               (index.astype("<u4"), {"componentType": 5125, "type": "SCALAR", "count": index.size})):
            model["accessors"].append({"bufferView": len(model["bufferViews"]), **accessor})
            model["bufferViews"].append({"buffer": 0, "byteOffset": len(binary), "byteLength": data.nbytes})
            binary += data.tobytes()
        model["meshes"].append({"name": p["name"], "primitives": [{"attributes": {"POSITION": 2 * number}, "indices": 2 * number + 1, "material": 0}]})
        for rows in numpy.array(p["placement"], dtype=float).reshape(-1, 4, 4):
            matrix = numpy.eye(4)
            matrix[:3, :3], matrix[:3, 3] = turn @ rows[:3, :3] @ turn.T, turn @ rows[:3, 3] / 1000
            model["scenes"][0]["nodes"].append(len(model["nodes"]))
            model["nodes"].append({"name": p["name"], "mesh": number, "matrix": matrix.T.ravel().tolist()})
    model["buffers"] = [{"byteLength": len(binary)}]
    pack_glb(file, model, binary)


def pack_glb(file, model, binary):
    text = json.dumps(model).encode()
    text += b" " * (-len(text) % 4)
    file.write_bytes(struct.pack("<4sIII4s", b"glTF", 2, 28 + len(text) + len(binary), len(text), b"JSON") + text
                     + struct.pack("<I4s", len(binary), b"BIN\0") + binary)


def read_stl(file):
    data = numpy.frombuffer(file.read_bytes(), dtype=numpy.uint8, offset=84).reshape(-1, 50)
    return data[:, 12:48].copy().view("<f4").reshape(-1, 3, 3).astype(float)
