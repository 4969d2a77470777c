"""What the kernel is told of heads and of the room between them."""
import math

from kernel_shell import FAR, VAST, across, body, cylinder, outer_at, sizes, upright

SPUN = ("hemisphere", "flanged", "torisphere", "spun cone")


def form(given):
    """The shape of a head; that of a flat one or a cone by how it is made."""
    if given["shape"] == "flat":
        return "flanged" if given["seat"] == "flanged" else "flat"
    if given["shape"] == "cone":
        return "spun cone" if given.get("made_from") == "spinning" else "cone"
    return given["shape"]


def level_of(end, design):
    return design["shell"]["height"] if end == "top" else 0


def way_of(end):
    return 1 if end == "top" else -1


def rim(end, design):
    """Radius of a dish's inside at the shell's end."""
    given = design[end]
    return outer_at(design["shell"], level_of(end, design)) - given.get("wall", given.get("thickness"))


def outline(given, inner, grow=0.0):
    """Of a flanged plate, spun cone or torisphere, its inside or what lies so far outside it: where its rim is, then pieces to the pole, each
    of (its end, the middle of an arc or None, the depth at a radius). Places are (radius, depth from the shell's end)."""
    shape, flange = form(given), given.get("flange", 0)
    start = (inner + grow, 0.0)
    if shape == "flanged":
        knuckle, side = given["knuckle_radius"] + grow, inner - given["knuckle_radius"]
        turn = knuckle * math.sqrt(0.5)
        return start, [((inner + grow, flange), None, None),
                       ((side, flange + knuckle), (side + turn, flange + turn), round_of(side, flange, knuckle)),
                       ((0.0, flange + knuckle), None, lambda radius: flange + knuckle)]
    if shape == "spun cone":
        half, nose, knuckle = math.radians(given["angle"]) / 2, given["nose_radius"], given["knuckle_radius"]
        side, sin, cos = inner - knuckle, math.sin(half), math.cos(half)
        # A line touches the knuckle where its normal comes from; the nose's middle, on the axis, lies its radius behind that line.
        touch = (side + (knuckle + grow) * cos, flange + (knuckle + grow) * sin)
        middle = flange + (side * cos + knuckle - nose) / sin
        meet = ((nose + grow) * cos, middle + (nose + grow) * sin)
        middle_turn, nose_turn = half / 2, (half + math.pi / 2) / 2
        return start, [((inner + grow, flange), None, None),
                       (touch, (side + (knuckle + grow) * math.cos(middle_turn), flange + (knuckle + grow) * math.sin(middle_turn)), round_of(side, flange, knuckle + grow)),
                       (meet, None, lambda radius: touch[1] + (touch[0] - radius) * cos / sin),
                       ((0.0, middle + nose + grow), ((nose + grow) * math.cos(nose_turn), middle + (nose + grow) * math.sin(nose_turn)),
                        round_of(0, middle, nose + grow))]
    crown, knuckle = given["crown_radius"], given["knuckle_radius"]
    side = inner - knuckle
    up = math.sqrt((crown - knuckle) ** 2 - side ** 2)
    touch = math.asin(side / (crown - knuckle))  # from the axis' direction, as all angles here
    half = (touch + math.pi / 2) / 2

    def on(across_, down, reach, turn):
        return (across_ + reach * math.sin(turn), down + reach * math.cos(turn))

    return start, [((inner + grow, flange), None, None),
                   (on(side, flange, knuckle + grow, touch), on(side, flange, knuckle + grow, half), round_of(side, flange, knuckle + grow)),
                   ((0.0, flange - up + crown + grow), on(0, flange - up, crown + grow, touch / 2), round_of(0, flange - up, crown + grow))]


def round_of(across_, down, reach):
    return lambda radius: down + math.sqrt(reach ** 2 - (radius - across_) ** 2)


def depth(given, inner, radius, grow=0.0):
    """Of a face at a distance from the axis, from the shell's end outward."""
    if form(given) == "cone":
        half = math.radians(given["angle"] / 2)
        return (inner - radius) / math.tan(half) + grow / math.sin(half)
    if form(given) == "hemisphere":
        return math.sqrt((inner + grow) ** 2 - radius ** 2)
    _, pieces = outline(given, inner, grow)
    return next(at(radius) for end, _, at in pieces if at and end[0] <= radius)


def dish(end, design, inner, level, grow=0.0):
    """What the head's inside encloses beyond the shell's end, or something so much more square to it; of a half sphere the other half too."""
    given, way = design[end], way_of(end)
    if form(given) == "hemisphere":
        return f"0 0 {level} {inner + grow:.17g} ball"
    if form(given) == "ellipsoid":  # half as deep as its radius: stretched about the origin
        return f"0 0 {2 * level} {inner} ball 0.5 stretch"
    if form(given) == "cone":
        tip = next(sizes(port)[1] for port in design["ports"] if port["in"] == end and port["at"]["radius"] == 0)
        return f"{inner} {level} start {tip} {level + way * depth(given, inner, tip)} line turned"
    start, pieces = outline(given, inner, grow)

    def at(place):
        return f"{place[0]:.17g} {level + way * place[1]:.17g}"

    text = f"{at(start)} start"
    for stop, middle, _ in pieces:
        text += f" {at(middle)} {at(stop)} arc" if middle else f" {at(stop)} line"
    return f"{text} turned"


def inner_face(end, design, radius):
    """Height of a head's inner face at a radius, in the vessel's frame."""
    given = design[end]
    deep = depth(given, rim(end, design), radius) if form(given) != "flat" else 0 if given["seat"] == "overlay" else -given["thickness"] - given["recess"]
    return level_of(end, design) + way_of(end) * deep


def thickness(end, design, radius):
    """Of a head along an upright line so far from the axis."""
    given = design[end]
    if form(given) == "flat":
        return given["thickness"]
    wall = given.get("wall", given.get("thickness"))
    return depth(given, rim(end, design), radius, wall) - depth(given, rim(end, design), radius)


def inside(design):
    """The room within shell and heads, without the bores of ports; every wall is as thick as the shell's."""
    shell = design["shell"]
    inner = shell["outside_diameter"] / 2 - shell["wall"]
    low, high = (inner_face(end, design, inner) if form(design[end]) == "flat" else level_of(end, design) for end in ("bottom", "top"))
    solid = body(shell, low, high, across(shell))
    for end, level in (("bottom", low), ("top", high)):
        if form(design[end]) != "flat":
            solid += f" {dish(end, design, inner, level)} fuse"
    return solid


def outside(end, design):
    """All that the outside of a spun head encloses."""
    given = design[end]
    return dish(end, design, rim(end, design), level_of(end, design), given.get("wall", given.get("thickness")))


def place(port):
    angle = math.radians(port["at"].get("angle", 0))
    return port["at"]["radius"] * math.cos(angle), port["at"]["radius"] * math.sin(angle)


def on_head(port, design):
    """Upright ones. On a plate they are plain rings, which the kernel only confirms."""
    outside_radius, bore, _ = sizes(port)
    end, given = port["in"], design[port["in"]]
    if form(given) == "flat":
        if port["joint"] == "set_on":
            yield f"volume {port['name']}", f"{upright(0, outside_radius, port['length'])} {upright(-FAR, bore, port['length'] + FAR)} cut volume"
        return
    if form(given) not in SPUN and not (form(given) == "cone" and port["at"]["radius"] > 0):
        return
    (x, y), level, way = place(port), level_of(end, design), way_of(end)
    if form(given) == "cone":
        # Its outer lines go on past both of its edges.
        tip, wide = (depth(given, rim(end, design), radius, given["wall"]) for radius in (1, 2 * rim(end, design)))
        levels = sorted([(level + way * tip, 1), (level + way * wide, 2 * rim(end, design))])
        whole = " ".join(f"{v:.17g}" for pair in levels for v in pair) + " cone"
    else:
        whole = outside(end, design)
    start = (x, y, level + way)  # past the plane in which the outside ends
    if port["joint"] == "set_on" and port.get("cut") == "ground":
        free = depth(given, rim(end, design), port["at"]["radius"], given.get("wall", given.get("thickness"))) + port["length"] - 1
        tube = f"{cylinder(start, (0, 0, way), outside_radius, free)} {cylinder(start, (0, 0, way), bore, free + FAR)} cut {whole} cut"
        yield f"volume {port['name']}", f"{tube} volume"
        yield f"area {port['name']}", f"{tube} area"
    yield f"weld {port['name']}", f"{cylinder(start, (0, 0, way), outside_radius, VAST)} {whole} meet"


def drilled(end, design, ports, level, far):
    """A cut of each port's hole, upright."""
    return "".join(f" {cylinder((*place(port), level - far), (0, 0, 1), sizes(port)[2], 2 * far)} cut" for port in ports)


def head(end, design):
    """Its metal; a cone's is asked of its segments."""
    given, shell = design[end], design["shell"]
    if form(given) == "flat":
        # An inset plate passes the narrowest of the bore that it stands in.
        deep = given["thickness"] + given.get("recess", 0)
        levels = (0, deep) if end == "bottom" else (shell["height"] - deep, shell["height"])
        radius = given.get("outside_diameter", shell["outside_diameter"]) / 2 if given["seat"] == "overlay" \
            else min(outer_at(shell, level) for level in levels) - across(shell) - given["clearance"]
        solid, level = upright(0, radius, given["thickness"]), 0
    else:
        level = level_of(end, design)
        solid = f"{outside(end, design)} {dish(end, design, rim(end, design), level)} cut"
        if form(given) == "hemisphere":
            solid += f" {upright(level, VAST, level + VAST) if end == 'top' else upright(level - VAST, VAST, level)} common"
    return solid + drilled(end, design, [port for port in design["ports"] if port["in"] == end], level, VAST)


def segments(end, design):
    """Of a cone rolled from several sheets: (name, solid) of one that is plain and of each that is drilled. Its faces are lines a wall apart
    and it is cut square to them: at the wide end where the inner one meets the shell's bore, at the narrow one where the outer one is as
    wide as the bore of the port that stands there, set on."""
    given, inner, level = design[end], rim(end, design), level_of(end, design)
    half, pitch = math.radians(given["angle"] / 2), 360 / given["segments"]
    tip = next(sizes(port)[1] for port in design["ports"] if port["in"] == end and port["at"]["radius"] == 0)
    over, back = given["wall"] * math.cos(half), given["wall"] * math.sin(half)
    long = (inner + over - tip) / math.sin(half)
    corners = [(inner, 0.0), (inner + over, back), (inner + over - long * math.sin(half), back + long * math.cos(half)),
               (inner - long * math.sin(half), long * math.cos(half))]
    at = [f"{r:.17g} {level + way_of(end) * deep:.17g}" for r, deep in corners]
    sheet = f"{at[0]} start " + " ".join(f"{text} line" for text in at[1:]) + f" {pitch:.17g} swung"
    yield f"{end} segment", sheet
    for port in design["ports"]:
        if port["in"] == end and port["at"]["radius"] > 0:
            number, turned = divmod(port["at"]["angle"] - given["seam_angle"], pitch)
            own = {**port, "at": {**port["at"], "angle": turned}}
            yield f"{end} segment {int(number) + 1}", sheet + drilled(end, design, [own], level, VAST)
