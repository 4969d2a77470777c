"""Closed outlines of a DXF as lines and arcs: area, length and extents exact, polygons for topology only."""
import math

from shapely.geometry import Polygon


class Piece:
    """From a to b; bulge = tan(sweep / 4), positive counter-clockwise."""

    def __init__(self, a, b, bulge):
        self.a, self.b, self.bulge = a, b, bulge
        self.chord = math.dist(a, b)
        self.sweep = 4 * math.atan(bulge)
        self.radius = math.inf
        if bulge != 0 and self.chord > 0:
            self.radius = self.chord * (1 + bulge * bulge) / (4 * abs(bulge))
            rise = (1 - bulge * bulge) / (4 * bulge)
            self.centre = ((a[0] + b[0]) / 2 - rise * (b[1] - a[1]), (a[1] + b[1]) / 2 + rise * (b[0] - a[0]))
            self.start = math.atan2(a[1] - self.centre[1], a[0] - self.centre[0])

    @property
    def is_arc(self):
        return math.isfinite(self.radius)

    @property
    def length(self):
        return self.radius * abs(self.sweep) if self.is_arc else self.chord

    @property
    def area(self):
        """Signed, of the triangle with the origin plus the segment between chord and arc."""
        triangle = (self.a[0] * self.b[1] - self.b[0] * self.a[1]) / 2
        return triangle + (self.radius ** 2 * (self.sweep - math.sin(self.sweep)) / 2 if self.is_arc else 0)

    def on_arc(self, share):
        angle = self.start + share * self.sweep
        return self.centre[0] + self.radius * math.cos(angle), self.centre[1] + self.radius * math.sin(angle)

    def extremes(self):
        """The ends and the points of the arc farthest along an axis."""
        yield self.a
        yield self.b
        if self.is_arc:
            low, high = sorted((self.start, self.start + self.sweep))
            for quarter in range(math.ceil(low / (math.pi / 2)), math.floor(high / (math.pi / 2)) + 1):
                yield self.on_arc((quarter * math.pi / 2 - self.start) / self.sweep)

    def flattened(self, sagitta):
        """Without the last point."""
        yield self.a
        if self.is_arc:
            step = 2 * math.acos(max(0.0, 1 - sagitta / self.radius))
            count = math.ceil(abs(self.sweep) / step)
            for i in range(1, count):
                yield self.on_arc(i / count)

    def slope_at(self, at_end):
        chord = math.atan2(self.b[1] - self.a[1], self.b[0] - self.a[0])
        return chord + (self.sweep / 2 if at_end else -self.sweep / 2)


class Loop:
    def __init__(self, pieces, entities=None):
        self.pieces = pieces
        self.entities = entities or len(pieces)
        self.area = abs(sum(p.area for p in pieces))
        self.length = sum(p.length for p in pieces)
        self.shortest = min(p.chord for p in pieces)

    def extents(self):
        points = [q for p in self.pieces for q in p.extremes()]
        xs, ys = zip(*points)
        return min(xs), min(ys), max(xs), max(ys)

    def polygon(self, sagitta=0.001):
        return Polygon([q for p in self.pieces for q in p.flattened(sagitta)])

    def turning(self):
        """Angle turned along arcs and at corners, all counted positive."""
        corners = sum(abs(math.remainder(n.slope_at(False) - p.slope_at(True), 2 * math.pi))
                      for p, n in zip(self.pieces, self.pieces[1:] + self.pieces[:1]))
        return corners + sum(abs(p.sweep) for p in self.pieces)


def loop_of(entity):
    """The outline of a CIRCLE, or of a closed LWPOLYLINE or POLYLINE; None for anything else."""
    kind = entity.dxftype()
    if kind == "CIRCLE":
        x, y, r = entity.dxf.center.x, entity.dxf.center.y, entity.dxf.radius
        ends = (x - r, y), (x + r, y)
        return Loop([Piece(ends[0], ends[1], 1), Piece(ends[1], ends[0], 1)], entities=1)
    if kind == "LWPOLYLINE" and entity.closed:
        vertices = [(x, y, b) for x, y, b in entity.get_points("xyb")]
    elif kind == "POLYLINE" and entity.is_2d_polyline and entity.is_closed:
        vertices = [(v.dxf.location.x, v.dxf.location.y, v.dxf.get("bulge", 0)) for v in entity.vertices]
    else:
        return None
    if len(vertices) < 2:
        return None
    return Loop([Piece(p[:2], q[:2], p[2]) for p, q in zip(vertices, vertices[1:] + vertices[:1])])
