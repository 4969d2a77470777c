"""Draws closed triangle meshes with numpy: parallel projection, depth buffer, smooth shading, outlines, filled sections."""
import dataclasses

import numpy

CREASE = numpy.cos(numpy.radians(32))
BACKGROUND = numpy.array([1.0, 1.0, 1.0])
LINE = numpy.array([0.13, 0.15, 0.18])
MARGIN = 0.06
FRAGMENTS = 3_000_000  # samples handled at once


@dataclasses.dataclass
class View:
    azimuth: float    # degrees, where the viewer stands
    elevation: float
    size: tuple       # pixels
    fine: int         # samples a pixel, each way

    def axes(self):
        """Rows: to the right, up, towards the viewer."""
        a, e = numpy.radians([self.azimuth, self.elevation])
        towards = numpy.array([numpy.cos(a) * numpy.cos(e), numpy.sin(a) * numpy.cos(e), numpy.sin(e)])
        right = numpy.array([-numpy.sin(a), numpy.cos(a), 0])
        return numpy.array([right, numpy.cross(towards, right), towards])


class Scene:
    def __init__(self, bodies):
        self.bodies = [(t, colour, smooth_normals(t)) for t, colour in bodies]
        points = numpy.concatenate([t.reshape(-1, 3) for t, _ in bodies])
        self.centre = (points.min(axis=0) + points.max(axis=0)) / 2

    def render(self, view, section=None):
        axes = view.axes()
        width, height = (int(s * view.fine) for s in view.size)
        scale = self.scale(axes, width, height)
        normal = None
        if section is not None:
            a = numpy.radians(section)
            normal = numpy.array([numpy.cos(a), numpy.sin(a), 0.0])
        buffer = Buffer(width, height)
        for index, (triangles, _, normals) in enumerate(self.bodies):
            points = triangles - self.centre
            if normal is not None:
                points, normals = clip(points, normals, normal)
            seen = points @ axes.T
            seen[:, :, 0] = seen[:, :, 0] * scale + width / 2
            seen[:, :, 1] = height / 2 - seen[:, :, 1] * scale
            buffer.draw(seen, normals @ axes.T, index)
        return self.shade(buffer, axes, scale, normal, view.fine)

    def scale(self, axes, width, height):
        flat = numpy.concatenate([(t - self.centre).reshape(-1, 3) @ axes.T for t, _, _ in self.bodies])
        reach = 2 * abs(flat[:, :2]).max(axis=0)
        return min(width / reach[0], height / reach[1]) * (1 - MARGIN)

    def shade(self, buffer, axes, scale, cut, fine):
        hit = buffer.body >= 0
        colours = numpy.array([c for _, c, _ in self.bodies])[numpy.maximum(buffer.body, 0)]
        # Where a back face is nearest, the line of sight has entered metal through the cut.
        capped = hit & buffer.back & (cut is not None)
        normals, depth = buffer.normal, buffer.depth
        if cut is not None:
            plane = axes @ cut
            x = (numpy.arange(buffer.width) + 0.5 - buffer.width / 2) / scale
            y = (buffer.height / 2 - numpy.arange(buffer.height) - 0.5) / scale
            on_plane = -(plane[0] * x[None, :] + plane[1] * y[:, None]) / plane[2]
            depth = numpy.where(capped, on_plane, depth)
            normals = numpy.where(capped[..., None], plane, normals)
        lit = colours * light(normals)[..., None]
        hatch = (numpy.add.outer(numpy.arange(buffer.height), numpy.arange(buffer.width)) // (2 * fine)) % 4 == 0
        lit = numpy.where(capped[..., None], colours * numpy.where(hatch, 0.55, 0.85)[..., None], lit)
        image = numpy.where(hit[..., None], lit, BACKGROUND)
        edges = outlines(numpy.where(hit, buffer.body * 2 + capped, -1), depth, normals, scale, hit)
        image = numpy.where(thicken(edges, fine)[..., None], LINE, image)
        small = image.reshape(buffer.height // fine, fine, buffer.width // fine, fine, 3).mean(axis=(1, 3))
        return (numpy.clip(small, 0, 1) * 255 + 0.5).astype(numpy.uint8)


class Buffer:
    def __init__(self, width, height):
        self.width, self.height = width, height
        self.depth = numpy.full((height, width), -numpy.inf)
        self.body = numpy.full((height, width), -1)
        self.back = numpy.zeros((height, width), dtype=bool)
        self.normal = numpy.zeros((height, width, 3))

    def draw(self, seen, normals, body):
        """Triangles with x and y in samples, depth towards the viewer; one normal a corner."""
        a, b, c = seen[:, 0], seen[:, 1], seen[:, 2]
        turn = (b[:, 0] - a[:, 0]) * (c[:, 1] - a[:, 1]) - (b[:, 1] - a[:, 1]) * (c[:, 0] - a[:, 0])
        keep = abs(turn) > 1e-9
        seen, normals, turn = seen[keep], normals[keep], turn[keep]
        low = numpy.maximum(numpy.ceil(seen[:, :, 1].min(axis=1) - 0.5), 0).astype(int)
        high = numpy.minimum(numpy.floor(seen[:, :, 1].max(axis=1) - 0.5), self.height - 1).astype(int)
        cost = numpy.maximum(high - low + 1, 0) * (1 + numpy.ptp(seen[:, :, 0], axis=1))
        batch = (numpy.cumsum(cost) // FRAGMENTS).astype(int)
        for first in numpy.unique(batch):
            take = batch == first
            self.draw_batch(seen[take], normals[take], turn[take], low[take], high[take], body)

    def draw_batch(self, seen, normals, turn, low, high, body):
        index, row = spread(low, high)
        if len(index) == 0:
            return
        left, right = spans(seen[index], row + 0.5)
        start = numpy.maximum(numpy.ceil(left - 0.5), 0).astype(int)
        end = numpy.minimum(numpy.floor(right - 0.5), self.width - 1).astype(int)
        which, column = spread(start, end)
        if len(which) == 0:
            return
        index, row = index[which], row[which]
        a, b, c = seen[index, 0], seen[index, 1], seen[index, 2]
        x, y = column + 0.5, row + 0.5
        area = turn[index]
        wb = ((x - a[:, 0]) * (c[:, 1] - a[:, 1]) - (y - a[:, 1]) * (c[:, 0] - a[:, 0])) / area
        wc = ((b[:, 0] - a[:, 0]) * (y - a[:, 1]) - (b[:, 1] - a[:, 1]) * (x - a[:, 0])) / area
        depth = a[:, 2] + wb * (b[:, 2] - a[:, 2]) + wc * (c[:, 2] - a[:, 2])
        place = row * self.width + column
        # Sorted by depth, the nearest of equal places is written last.
        nearer = numpy.flatnonzero(depth > self.depth.ravel()[place])
        nearer = nearer[numpy.argsort(depth[nearer], kind="stable")]
        place, index, wb, wc = place[nearer], index[nearer], wb[nearer, None], wc[nearer, None]
        self.depth.ravel()[place] = depth[nearer]
        self.body.ravel()[place] = body
        self.back.ravel()[place] = turn[index] > 0  # y runs down: a front face turns negative
        n = normals[index, 0] * (1 - wb - wc) + normals[index, 1] * wb + normals[index, 2] * wc
        self.normal.reshape(-1, 3)[place] = n / numpy.maximum(numpy.linalg.norm(n, axis=1, keepdims=True), 1e-12)


def spread(low, high):
    """For each i, the integers low[i]..high[i]: their i, and they themselves."""
    count = numpy.maximum(high - low + 1, 0)
    index = numpy.repeat(numpy.arange(len(low)), count)
    offset = numpy.arange(len(index)) - numpy.repeat(numpy.cumsum(count) - count, count)
    return index, low[index] + offset


def spans(triangles, y):
    """Leftmost and rightmost x where the line y crosses each triangle."""
    left, right = numpy.full(len(y), numpy.inf), numpy.full(len(y), -numpy.inf)
    for k in range(3):
        p, q = triangles[:, k], triangles[:, (k + 1) % 3]
        crosses = (p[:, 1] <= y) != (q[:, 1] <= y)
        rise = numpy.where(crosses, q[:, 1] - p[:, 1], 1)
        x = p[:, 0] + (y - p[:, 1]) / rise * (q[:, 0] - p[:, 0])
        left = numpy.where(crosses, numpy.minimum(left, x), left)
        right = numpy.where(crosses, numpy.maximum(right, x), right)
    flat = left > right
    return numpy.where(flat, 0, left), numpy.where(flat, -1, right)


def smooth_normals(triangles):
    """At each corner the mean of the facets round it that lie within the crease angle, weighted by their angles there."""
    across = numpy.cross(triangles[:, 1] - triangles[:, 0], triangles[:, 2] - triangles[:, 0])
    facet = across / numpy.maximum(numpy.linalg.norm(across, axis=1, keepdims=True), 1e-12)
    _, vertex = numpy.unique(triangles.reshape(-1, 3), axis=0, return_inverse=True)
    vertex = vertex.ravel()
    sides = [triangles[:, (k + 1) % 3] - triangles[:, k] for k in range(3)]
    unit = [s / numpy.maximum(numpy.linalg.norm(s, axis=1, keepdims=True), 1e-12) for s in sides]
    angle = numpy.stack([numpy.arccos(numpy.clip((-unit[(k + 2) % 3] * unit[k]).sum(axis=1), -1, 1)) for k in range(3)], axis=1).ravel()
    order = numpy.argsort(vertex, kind="stable")
    count = numpy.bincount(vertex)
    first = numpy.cumsum(count) - count
    corners = numpy.repeat(facet, 3, axis=0)
    result = numpy.zeros_like(corners)
    # A vertex with many facets is the hub of a flat fan: its corners are compared in slices.
    size = numpy.cumsum(count[vertex])
    for part in numpy.split(numpy.arange(len(vertex)), numpy.searchsorted(size, numpy.arange(FRAGMENTS, size[-1], FRAGMENTS))):
        mine, slot = spread(first[vertex[part]], first[vertex[part]] + count[vertex[part]] - 1)
        mine, other = part[mine], order[slot]
        near = (corners[mine] * corners[other]).sum(axis=1) > CREASE
        mine, other = mine[near], other[near]
        for axis in range(3):
            result[:, axis] += numpy.bincount(mine, corners[other, axis] * angle[other], minlength=len(vertex))
    length = numpy.linalg.norm(result, axis=1, keepdims=True)
    return numpy.where(length > 1e-9, result / numpy.maximum(length, 1e-9), corners).reshape(-1, 3, 3)


def clip(points, normals, plane):
    """What lies behind the plane through the origin: triangles cut by it become one or two."""
    side = points @ plane
    whole = (side <= 0).all(axis=1)
    kept, kept_normals = [points[whole]], [normals[whole]]
    cut = ~whole & (side <= 0).any(axis=1)
    p, n, s = points[cut], normals[cut], side[cut]
    behind = s <= 0
    for count in (1, 2):  # corners behind the plane
        chosen = behind.sum(axis=1) == count
        lone = numpy.argmax(behind[chosen] if count == 1 else ~behind[chosen], axis=1)
        turn = (lone[:, None] + numpy.arange(3)) % 3  # the lone corner first, sense kept
        take = numpy.arange(len(lone))[:, None], turn
        q, m, d = p[chosen][take], n[chosen][take], s[chosen][take]
        t1 = (d[:, 0] / (d[:, 0] - d[:, 1]))[:, None]
        t2 = (d[:, 0] / (d[:, 0] - d[:, 2]))[:, None]
        q1, m1 = q[:, 0] + t1 * (q[:, 1] - q[:, 0]), m[:, 0] + t1 * (m[:, 1] - m[:, 0])
        q2, m2 = q[:, 0] + t2 * (q[:, 2] - q[:, 0]), m[:, 0] + t2 * (m[:, 2] - m[:, 0])
        if count == 1:
            kept.append(numpy.stack([q[:, 0], q1, q2], axis=1))
            kept_normals.append(numpy.stack([m[:, 0], m1, m2], axis=1))
        else:
            kept += [numpy.stack([q1, q[:, 1], q[:, 2]], axis=1), numpy.stack([q1, q[:, 2], q2], axis=1)]
            kept_normals += [numpy.stack([m1, m[:, 1], m[:, 2]], axis=1), numpy.stack([m1, m[:, 2], m2], axis=1)]
    return numpy.concatenate(kept), numpy.concatenate(kept_normals)


def light(normals):
    """From over the viewer's left shoulder, with a weak one from the right."""
    key, fill = numpy.array([-0.45, 0.6, 0.66]), numpy.array([0.8, 0.1, 0.6])
    return 0.52 + 0.5 * numpy.maximum(normals @ key, 0) + 0.2 * numpy.maximum(normals @ fill, 0)


def outlines(body, depth, normals, scale, hit):
    """Between neighbouring samples of different bodies, far apart in depth, or across a crease."""
    edges = numpy.zeros(body.shape, dtype=bool)
    for axis in (0, 1):
        def pair(values):
            return (values[:-1], values[1:]) if axis == 0 else (values[:, :-1], values[:, 1:])
        (b0, b1), (n0, n1), (h0, h1) = pair(body), pair(normals), pair(hit)
        d0, d1 = pair(numpy.where(hit, depth, 0))
        # A smooth surface seen at a slant changes depth by its slope from sample to sample: more is a step.
        steep = numpy.maximum(numpy.minimum(abs(n0[..., 2]), abs(n1[..., 2])), 0.05)
        step = abs(d0 - d1) > 2.5 / scale / steep
        crease = (n0 * n1).sum(axis=-1) < CREASE
        found = (b0 != b1) | (h0 & h1 & (step | crease))
        first, _ = pair(edges)
        first |= found
    return edges


def thicken(edges, fine):
    """To about half a pixel on either side."""
    wide = edges.copy()
    for _ in range(max(1, fine // 2)):
        grown = wide.copy()
        grown[1:] |= wide[:-1]
        grown[:-1] |= wide[1:]
        grown[:, 1:] |= wide[:, :-1]
        grown[:, :-1] |= wide[:, 1:]
        wide = grown
    return wide
