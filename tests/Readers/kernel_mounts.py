"""What the kernel is told of straps and of plates that stand on the shell: sharp outlines, whose edges the kernel itself rounds."""
import math

from kernel_shell import FAR, VAST, cylinder, outer_at

HOLES = {6: 6.6, 8: 9, 10: 11}  # clearance for a bolt, ISO 273, medium series: from memory


def prism(points, origin, u, v, height):
    """Of a polygon along u and v, its depth square to both; a sheet where that is 0."""
    (x, y), *others = points
    text = f"{numbers((x, y))} start " + " ".join(f"{numbers(place)} line" for place in others)
    return f"{text} {numbers([*origin, *u, *v, height])} prism"


def numbers(values):
    return " ".join(f"{value:.17g}" for value in values)


def cross(a, b):
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])


def listed(design, key):
    given = design.get(key, [])
    return given if isinstance(given, list) else [given]


def box(low, high):
    (x0, y0, z0), (x1, y1, z1) = low, high
    return prism([(x0, y0), (x1, y0), (x1, y1), (x0, y1)], (0, 0, z0), (1, 0, 0), (0, 1, 0), z1 - z0)


def rounded(at, z, radius):
    return f" {numbers((*at, z, radius))} round"


def hole(bolts, middle, along, through, far):
    """What a bolt's hole takes: round, or drawn out; from `far` below its middle to `far` above it, the way it goes through."""
    radius, half = HOLES[bolts["diameter"]] / 2, bolts.get("slot", 0) / 2
    ends = [[m + sign * half * a - far * t for m, a, t in zip(middle, along, through)] for sign in (-1, 1)]
    text = cylinder(ends[0], through, radius, 2 * far)
    if half:
        flat = prism([(0, -radius), (2 * half, -radius), (2 * half, radius), (0, radius)], ends[0], along, cross(through, along), 2 * far)
        text += f" {cylinder(ends[1], through, radius, 2 * far)} fuse {flat} fuse"
    return text


def both(distance):
    return [-distance / 2, distance / 2] if distance else [0]


def strap(given, shell, is_back):
    """Half of it: x sideways, y outward through its middle, z up from its lower edge; its middle plane cuts x = 0."""
    thick, wide, bend, feet = given["thickness"], given["width"], given["inside_radius"], given["feet"]
    inner = outer_at(shell, given["at"]["height"]) + given.get("liner", 0)
    low = given["gap"] / 2
    # The bend's middle stands off band and ear by its radius: where the ear becomes straight.
    straight = math.sqrt((inner + thick + bend) ** 2 - (low + thick + bend) ** 2)
    end = straight + given["ear"]
    bolts = [(given["bolts"], end - given["ear"] / 2, low + thick / 2)]
    outer = inner + thick
    turns = [((math.sqrt(outer ** 2 - (low + thick) ** 2), low + thick), bend), ((math.sqrt(inner ** 2 - low ** 2), low), bend + thick)]
    if is_back and "stand_off" in feet:
        leg, face = end + bend, outer_at(shell, given["at"]["height"]) + feet["stand_off"]
        toe = leg + thick + bend + feet["length"]
        half = [(leg + thick, -FAR), (leg + thick, face - thick), (toe, face - thick), (toe, face), (leg, face), (leg, low + thick)]
        turns += [((leg, low + thick), bend), ((leg + thick, low), bend + thick), ((leg, face), bend + thick), ((leg + thick, face - thick), bend)]
        bolts.append((feet["bolts"], toe - feet["length"] / 2, face - thick / 2))
    else:
        toe = end + (feet["length"] if is_back else 0)
        half = [(toe, -FAR), (toe, low + thick)]
        if is_back:
            bolts.append((feet["bolts"], toe - feet["length"] / 2, low + thick / 2))
    outline = [*half, *[(-x, y) for x, y in reversed(half)]]
    solid = f"{prism(outline, (0, 0, 0), (1, 0, 0), (0, 1, 0), wide)} {cylinder((0, 0, 0), (0, 0, 1), outer, wide)} fuse"
    solid += f" {box((-VAST, -VAST, -FAR), (VAST, low, wide + FAR))} cut {cylinder((0, 0, -FAR), (0, 0, 1), inner, wide + 2 * FAR)} cut"
    for side in (-1, 1):
        for (x, y), turn in turns:
            solid += rounded((side * x, y), wide / 2, turn)
        for own, x, y in bolts:
            for up in both(own.get("up", 0)):
                solid += f" {hole(own, (side * x, y, wide / 2 + up), (1, 0, 0), (0, 1, 0), thick)} cut"
    return solid


def straps(design):
    for given in listed(design, "strap"):
        name = given.get("name", "strap")
        for half, is_back in (("back", True), ("front", False)):
            solid = strap(given, design["shell"], is_back)
            yield f"volume {name} {half}", f"{solid} volume"
            yield f"area {name} {half}", f"{solid} area"


def plates(design):
    """Each in the vessel's frame, but that its line outward is +x and sideways +y."""
    for given in listed(design, "bracket"):
        if given.get("kind") == "plate":
            yield from plate(given, design["shell"])


def plate(given, shell):
    at, thick, width, depth, name = given["at"], given["thickness"], given["width"], given["depth"], given.get("name", "bracket")
    roll, offset, radius = math.radians(at.get("roll", 0)), at.get("offset", 0), outer_at(shell, at["height"])
    along, normal, outward = (0, math.cos(roll), math.sin(roll)), (0, -math.sin(roll), math.cos(roll)), (1, 0, 0)

    def space(u, v, n):
        """Along its edge from the middle, outward from the vessel's axis, through the thickness from its middle."""
        return (v, offset + u * along[1] + n * normal[1], at["height"] + u * along[2] + n * normal[2])

    # All that is found of the shell through the thickness: two shells as far apart as it reaches sideways, and what lies between.
    aside = abs(thick / 2 * normal[1])
    found = cylinder((0, aside, -VAST), (0, 0, 1), radius, 2 * VAST)
    if aside:
        between = box((-radius, -aside, -VAST), (radius, aside, VAST))
        found += f" {cylinder((0, -aside, -VAST), (0, 0, 1), radius, 2 * VAST)} fuse {between} fuse"

    def level(u):
        return math.sqrt(radius ** 2 - max(0, abs(offset + u * along[1]) - aside) ** 2)

    # The sides run straight from the ends of the cut edge to the free one.
    free, half_free = level(0) + depth, given.get("free_width", width) / 2
    ends = [(sign * width / 2, level(sign * width / 2)) for sign in (-1, 1)]
    outline = [(-width / 2, 0), ends[0], (-half_free, free), (half_free, free), ends[1], (width / 2, 0)]
    solid = prism(outline, space(0, 0, thick / 2), along, outward, thick)  # along x outward looks against the normal
    if given.get("corner"):
        for sign in (-1, 1):
            solid += " " + numbers([*space(sign * half_free, free, 0), given["corner"]]) + " round"
    solid += f" {found} {numbers([*space(0, 0, 0), *normal, thick])} slice cut"
    bolts = given["bolts"]
    for u in both(bolts.get("across", 0)):
        for up in both(bolts.get("up", 0)):
            middle = space(u, level(0) + bolts.get("from_shell", depth / 2) + up, 0)
            solid += f" {hole(bolts, middle, outward, normal, thick)} cut"
    yield f"volume {name}", f"{solid} volume"
    yield f"area {name}", f"{solid} area"
    sides = ("upper", "lower") if abs(roll) < math.pi / 4 else ("left", "right") if roll > 0 else ("right", "left")
    for side, sign in zip(sides, (1, -1)):
        face = prism([(-width / 2, 0), (width / 2, 0), (width / 2, free), (-width / 2, free)], space(0, 0, sign * thick / 2), along, outward, 0)
        yield f"weld {side} side of {name}", f"{face} {cylinder((0, 0, -VAST), (0, 0, 1), radius, 2 * VAST)} meet"
