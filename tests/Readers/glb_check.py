#!/usr/bin/python3
"""Reads every GLB of a build by the glTF 2.0 specification alone and checks it against the summary and the STLs."""
import json
import struct

import numpy

import assembly
from checks import run_reader, summary_of

FORMATS = {(5126, "VEC3"): ("<f4", 3), (5125, "SCALAR"): ("<u4", 1)}
# Metres, Y up, to the vessel's millimetres, Z up.
TO_VESSEL = numpy.array([[1, 0, 0], [0, 0, -1], [0, 1, 0]]) * 1000.0


def read(file):
    """The JSON and the binary chunk. Raises ValueError for anything that the container's rules forbid."""
    data = file.read_bytes()
    magic, version, length, json_length, json_kind = struct.unpack_from("<4sIII4s", data)
    if (magic, version, json_kind) != (b"glTF", 2, b"JSON"):
        raise ValueError("no GLB of version 2")
    if length != len(data) or json_length % 4:
        raise ValueError("its length is not as stated")
    binary_length, binary_kind = struct.unpack_from("<I4s", data, 20 + json_length)
    if binary_kind != b"BIN\0" or binary_length % 4 or 28 + json_length + binary_length != length:
        raise ValueError("the binary chunk is not as stated")
    return json.loads(data[20:20 + json_length]), data[28 + json_length:]


def values(model, binary, index):
    accessor = model["accessors"][index]
    view = model["bufferViews"][accessor["bufferView"]]
    kind, width = FORMATS[accessor["componentType"], accessor["type"]]
    if view["byteLength"] != 4 * width * accessor["count"] or view["byteOffset"] + view["byteLength"] > model["buffers"][view["buffer"]]["byteLength"]:
        raise ValueError(f"accessor {index} does not fit its view")
    return numpy.frombuffer(binary, dtype=kind, offset=view["byteOffset"], count=width * accessor["count"]).reshape(-1, width)


def check(folder, checks):
    summary = summary_of(folder)
    for file in sorted(folder.rglob("*.glb")):
        where = f"{folder.name}/{file.relative_to(folder)}"
        try:
            bodies = bodies_of(file, where, checks)
        except (KeyError, IndexError, ValueError, TypeError, struct.error) as error:
            checks.that(False, where, f"cannot read it: {type(error).__name__}: {error}")
            continue
        for body in bodies:
            checks.that(assembly.volume(body.triangles) > 0, where, f"{body.name} is inside out")
            checks.that(is_closed(body.triangles), where, f"{body.name} is open")
        if file.name == "assembly.glb":
            # Two roundings to single precision, below 1 m.
            assembly.check(summary, folder, bodies, 2e-4, where, checks)


def bodies_of(file, where, checks):
    model, binary = read(file)
    checks.that(model["asset"]["version"] == "2.0", where, "not glTF 2.0")
    checks.that(model["buffers"][0]["byteLength"] <= len(binary) < model["buffers"][0]["byteLength"] + 4, where, "buffer and chunk differ in length")
    scene = model["scenes"][model["scene"]]
    bodies = []
    for node in (model["nodes"][i] for i in scene["nodes"]):
        mesh = model["meshes"][node["mesh"]]
        primitive, = mesh["primitives"]
        index = primitive["attributes"]["POSITION"]
        points, corners = values(model, binary, index), values(model, binary, primitive["indices"])
        accessor = model["accessors"][index]
        checks.that((points.min(axis=0) == accessor["min"]).all() and (points.max(axis=0) == accessor["max"]).all(), where,
                    f"the box of {mesh['name']} is not that of its points")
        matrix = numpy.array(node.get("matrix", numpy.eye(4)), dtype=float).reshape(4, 4).T
        turned = TO_VESSEL @ matrix[:3, :3] @ numpy.linalg.inv(TO_VESSEL)
        triangles = points.astype(float)[corners.ravel()].reshape(-1, 3) @ TO_VESSEL.T
        material = model["materials"][primitive["material"]]
        checks.that(all(0 <= c <= 1 for c in material["pbrMetallicRoughness"]["baseColorFactor"]), where, "a colour is out of range")
        bodies.append(assembly.Body(node["name"], material["name"], triangles.reshape(-1, 3, 3), turned, TO_VESSEL @ matrix[:3, 3]))
    return bodies


def is_closed(triangles):
    _, index = numpy.unique(triangles.reshape(-1, 3), axis=0, return_inverse=True)
    index = index.reshape(-1, 3)
    sides = numpy.concatenate([index[:, [0, 1]], index[:, [1, 2]], index[:, [2, 0]]])
    forth, back = (numpy.sort(s[:, 0].astype("i8") << 32 | s[:, 1]) for s in (sides, sides[:, ::-1]))
    return (forth == back).all() and (numpy.diff(forth) > 0).all()


if __name__ == "__main__":
    run_reader(check)
