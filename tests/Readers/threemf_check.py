#!/usr/bin/python3
"""Reads every 3MF of a build with lib3mf, the 3MF Consortium's own library, and checks it against the summary and the STLs."""
import ctypes
import zipfile

import numpy

import assembly
from checks import run_reader, summary_of

LEAST_ALTITUDE = 0.001  # mm, as solid_check has it; rounding to floats takes 2e-5 of it at 300 mm
MILLIMETRE = 1  # lib3mf: micrometre, millimetre, centimetre, inch, foot, metre from 0


class Library:
    """The few calls that are needed, each checked. Every one returns 0 for success."""

    def __init__(self):
        self.dll = ctypes.CDLL("lib3MF.so.1.8.1.0")

    def call(self, name, *arguments):
        code = getattr(self.dll, "lib3mf_" + name)(*arguments)
        if code != 0:
            raise ValueError(f"lib3mf_{name} answers 0x{code & 0xFFFFFFFF:X}")

    def number(self, name, *arguments, kind=ctypes.c_uint32):
        value = kind()
        self.call(name, *arguments, ctypes.byref(value))
        return value.value

    def handle(self, name, *arguments):
        return ctypes.c_void_p(self.number(name, *arguments, kind=ctypes.c_void_p))

    def text(self, name, *arguments):
        buffer, needed = ctypes.create_string_buffer(1024), ctypes.c_ulong()
        self.call(name, *arguments, buffer, ctypes.c_ulong(1024), ctypes.byref(needed))
        return buffer.value.decode()

    def each(self, iterator, kind):
        while self.number(kind + "_movenext", iterator):
            yield self.handle(kind + "_getcurrent", iterator)


def read(file):
    """Unit, warnings, objects by id and items in their order."""
    library = Library()
    model = library.handle("createmodel")
    reader = library.handle("model_queryreader", model, b"3mf")
    library.call("reader_readfromfileutf8", reader, str(file).encode())
    objects = {}
    for mesh in library.each(library.handle("model_getmeshobjects", model), "resourceiterator"):
        count = library.number("meshobject_getvertexcount", mesh)
        vertices = numpy.zeros((count, 3), dtype="<f4")
        for i in range(count):
            library.call("meshobject_getvertex", mesh, i, ctypes.c_void_p(vertices.ctypes.data + 12 * i))
        count = library.number("meshobject_gettrianglecount", mesh)
        triangles = numpy.zeros((count, 3), dtype="<u4")
        library.call("meshobject_gettriangleindices", mesh, ctypes.c_void_p(triangles.ctypes.data), count, None)
        properties = library.handle("object_createdefaultpropertyhandler", mesh)
        group, index = ctypes.c_uint32(), ctypes.c_uint32()
        library.call("defaultpropertyhandler_getbasematerial", properties, ctypes.byref(group), ctypes.byref(index))
        materials = library.handle("model_getresourcebyid", model, group)
        objects[library.number("resource_getresourceid", mesh)] = {
            "name": library.text("object_getnameutf8", mesh),
            "corners": vertices[triangles].astype(float),
            "manifold": bool(library.number("meshobject_ismanifoldandoriented", mesh)),
            "material": library.text("basematerial_getnameutf8", materials, index),
        }
    items = []
    for item in library.each(library.handle("model_getbuilditems", model), "builditemiterator"):
        rows = numpy.zeros((3, 4), dtype="<f4")
        library.call("builditem_getobjecttransform", item, ctypes.c_void_p(rows.ctypes.data))
        items.append((library.number("builditem_getobjectresourceid", item), rows.astype(float)))
    return {"unit": library.number("model_getunit", model), "warnings": library.number("reader_getwarningcount", reader),
            "objects": objects, "items": items}


def check(folder, checks):
    summary = summary_of(folder)
    for file in sorted(folder.rglob("*.3mf")):
        where = f"{folder.name}/{file.relative_to(folder)}"
        try:
            model = read(file)
        except (OSError, AttributeError, ValueError) as error:
            checks.that(False, where, f"lib3mf is missing or cannot read it: {error}")
            continue
        check_package(file, where, checks)
        checks.that(model["unit"] == MILLIMETRE, where, f"unit {model['unit']} is not the millimetre")
        checks.that(model["warnings"] == 0, where, f"{model['warnings']} warnings")
        checks.that(model["items"], where, "nothing to build")
        for body in model["objects"].values():
            checks.that(body["name"], where, "an object has no name")
            checks.that(body["manifold"], where, f"{body['name']} is not manifold and oriented")
            checks.that(assembly.volume(body["corners"]) > 0, where, f"{body['name']} is inside out")
        if file.parent.name == "section":
            names = [model["objects"][i]["name"] for i, _ in model["items"]]
            checks.that(names == [piece["name"] for piece in summary["section"]["pieces"]], where, f"has the pieces {names}")
            for body in model["objects"].values():
                thin = least_altitude(body["corners"])
                checks.that(thin >= LEAST_ALTITUDE, where, f"{body['name']}: least altitude of a triangle {thin:.3g} mm")
        elif file.parent.name == "solids":
            bodies = [assembly.Body(model["objects"][i]["name"], model["objects"][i]["material"], model["objects"][i]["corners"],
                                    rows[:, :3], rows[:, 3]) for i, rows in model["items"]]
            # Coordinates are written to 1e-5 mm and held in single precision.
            assembly.check(summary, folder, bodies, 1e-5 + 1e-6 * 150, where, checks)


def least_altitude(corners):
    """Of all triangles, over their longest sides, mm."""
    sides = corners - numpy.roll(corners, 1, axis=1)
    longest = numpy.linalg.norm(sides, axis=2).max(axis=1)
    return (numpy.linalg.norm(numpy.cross(sides[:, 0], sides[:, 1]), axis=1) / longest).min()


def check_package(file, where, checks):
    """Equal input gives equal bytes, so no file in the package may carry a time."""
    with zipfile.ZipFile(file) as package:
        checks.that(all(entry.date_time == (1980, 1, 1, 0, 0, 0) for entry in package.infolist()), where, "carries a time")
        checks.that(package.testzip() is None, where, "a checksum is wrong")


if __name__ == "__main__":
    run_reader(check)
