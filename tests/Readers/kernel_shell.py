"""What the kernel is told of a shell and of tubes, as the text that kernel/kernel.cpp takes."""
import math

VAST = 2000.0  # mm, past every vessel here
FAR = 10.0    # mm beyond a face, so that a cut passes it


def cylinder(origin, way, radius, length):
    return " ".join(f"{v:.17g}" for v in [*origin, *way, radius, length]) + " cylinder"


def upright(low, radius, high):
    return cylinder((0, 0, low), (0, 0, 1), radius, high - low)


def axis(port, shell):
    """Where the port's axis meets the shell's outside, and the way it leaves."""
    at = port["at"]
    angle, tilt, offset = math.radians(at.get("angle", 0)), math.radians(at.get("tilt", 0)), at.get("offset", 0)
    forward = math.sqrt(outer_at(shell, at["height"]) ** 2 - offset ** 2)
    out, side = (math.cos(angle), math.sin(angle)), (-math.sin(angle), math.cos(angle))
    foot = (forward * out[0] + offset * side[0], forward * out[1] + offset * side[1], at["height"])
    return foot, (math.cos(tilt) * out[0], math.cos(tilt) * out[1], math.sin(tilt))


def along(foot, way, s):
    return tuple(f + s * w for f, w in zip(foot, way))


def sizes(port):
    tube = port["tube"]
    outside = tube["outside_diameter"] / 2
    bore = outside - tube["wall"]
    return outside, bore, bore if port["joint"] == "set_on" else outside + port["clearance"]


def through(foot, way, shell):
    """From the outside to the inside, inward along an axis: r (s) = rho (z (s)), squared; both straight in s but for the root."""
    slope, inner = lean(shell), outer_at(shell, foot[2]) - across(shell)
    a = way[0] ** 2 + way[1] ** 2 - (slope * way[2]) ** 2
    b = foot[0] * way[0] + foot[1] * way[1] - inner * slope * way[2]
    c = foot[0] ** 2 + foot[1] ** 2 - inner ** 2
    return c / (b + math.sqrt(b * b - a * c))  # the nearer root of a s^2 - 2 b s + c


def lean(shell):
    """By how much the radius grows for each mm of height."""
    return (shell.get("top_diameter", shell["outside_diameter"]) - shell["outside_diameter"]) / 2 / shell["height"]


def across(shell):
    """The wall, cut level."""
    return shell["wall"] * math.hypot(1, lean(shell))


def outer_at(shell, height):
    return shell["outside_diameter"] / 2 + lean(shell) * height


def body(shell, low, high, less=0.0):
    """What the outside encloses between two levels, or something so much less in radius."""
    if lean(shell) == 0:
        return upright(low, outer_at(shell, low) - less, high)
    return f"{low} {outer_at(shell, low) - less:.17g} {high} {outer_at(shell, high) - less:.17g} cone"
