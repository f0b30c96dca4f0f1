"""A second opinion on the figures: worked out a second time, in another language, from the written definitions alone.

It shares no code with the project. It needs Python 3 and nothing else, reads second-opinion-inputs.json beside it (SI
units; a measured thing is a pair of value and standard uncertainty) and writes second-opinion.json beside it:

    python3 tests/figures/second-opinion.py
"""

import json
import math
from pathlib import Path

HERE = Path(__file__).parent
GRAVITY = 9.80665

# What is taken where an entry gives nothing: value and standard uncertainty.
DEFAULTS = {
    "density": [930.0, 20.0],
    "energy at break": [12000.0, 2000.0],
    "stretch at break": [7.6, 0.5],
    "turns constant": [10.6, 1.2],
    "efficiency of one propeller": [0.65, 0.10],
    "efficiency of several": [0.50, 0.15],
    "profile drag factor": [1.3, 0.3],
    "parasite drag": [0.012, 0.006],
    "folds": [0.005, 0.003],
    "freewheels": [0.02, 0.015],
    "span efficiency": [0.80, 0.08],
    "usable lift": [1.0, 0.1],
    "temperature": [288.15, 8.0],
    "pressure": [101325.0, 1000.0],
    "humidity": [0.5, 0.25],
    "drop": [0.0, 0.5],
}

# L. R. G. Treloar, Trans. Faraday Soc. 40 (1944) 59: stretch, stress in kgf/cm2.
TRELOAR = [
    (1, 0), (1.02, 0.26), (1.125, 1.37), (1.24, 2.30), (1.39, 3.23), (1.585, 4.16), (1.90, 5.10), (2.18, 6.00),
    (2.42, 6.90), (3.02, 8.80), (3.57, 10.7), (4.03, 12.5), (4.76, 16.2), (5.36, 19.9), (5.75, 23.6), (6.15, 27.4),
    (6.40, 31.0), (6.60, 34.8), (6.85, 38.5), (7.05, 42.1), (7.15, 45.8), (7.25, 49.6), (7.40, 53.3), (7.50, 57.0),
    (7.60, 64.4),
]


def work_below(points, upto):
    """Area under the broken line through the points (x rising) from the first x to `upto`; the last slope goes on."""
    total = 0.0
    for number in range(len(points) - 1):
        (x0, y0), (x1, y1) = points[number], points[number + 1]
        last = number == len(points) - 2
        end = upto if last else min(upto, x1)
        if end <= x0:
            break
        y = y0 + (y1 - y0) * (end - x0) / (x1 - x0)
        total += (end - x0) * (y0 + y) / 2
    return total


# --- the wing, integrated by Simpson's rule (exact for cubics, and no integrand here is of a higher degree) ---


def over_half_span(panels, integrand):
    """Integral over the half span of integrand(y, chord, leading edge, dihedral)."""
    total, y0, edge0 = 0.0, 0.0, 0.0
    for panel in panels:
        width = panel["length"] * math.cos(panel["dihedral"])
        samples = []
        for part in (0.0, 0.5, 1.0):
            chord = panel["root"] + (panel["tip"] - panel["root"]) * part
            samples.append(integrand(y0 + width * part, chord, edge0 + panel["sweep"] * part, panel["dihedral"]))
        total += width / 6 * (samples[0] + 4 * samples[1] + samples[2])
        y0 += width
        edge0 += panel["sweep"]
    return total


# --- air: CIPM-2007 (Picard et al., Metrologia 45 (2008) 149), viscosity as in the US Standard Atmosphere 1976 ---


def air_density(temperature, pressure, humidity):
    celsius = temperature - 273.15
    saturated = math.exp(
        1.2378847e-5 * temperature**2 - 1.9121316e-2 * temperature + 33.93711047 - 6.3431645e3 / temperature
    )
    enhancement = 1.00062 + 3.14e-8 * pressure + 5.6e-7 * celsius**2
    vapour = humidity * enhancement * saturated / pressure
    compressibility = (
        1
        - pressure
        / temperature
        * (
            1.58123e-6 - 2.9331e-8 * celsius + 1.1043e-10 * celsius**2
            + (5.707e-6 - 2.051e-8 * celsius) * vapour
            + (1.9898e-4 - 2.376e-6 * celsius) * vapour**2
        )
        + (pressure / temperature) ** 2 * (1.83e-11 - 0.765e-8 * vapour**2)
    )
    return 3.483740e-3 * pressure / (compressibility * temperature) * (1 - 0.3780 * vapour)


def viscosity(temperature):
    return 1.458e-6 * temperature**1.5 / (temperature + 110.4)


# --- the polar ---


def steadiest_glide(weight, area, chord, aspect, density, mu, factor, fixed_drag, efficiency, highest_lift):
    """Sink, speed, glide ratio and lift coefficient where the sink is least, up to `highest_lift` (golden section)."""

    def glide(lift):
        speed = math.sqrt(2 * weight / (density * area * lift))
        reynolds = density * speed * chord / mu
        drag = factor * 2 * 1.328 / math.sqrt(reynolds) + fixed_drag + lift**2 / (math.pi * efficiency * aspect)
        return speed * drag / lift, speed, lift / drag, lift

    low, high, ratio = 0.05, highest_lift, (math.sqrt(5) - 1) / 2
    for _ in range(200):
        one, other = high - ratio * (high - low), low + ratio * (high - low)
        if glide(one)[0] <= glide(other)[0]:
            high = other
        else:
            low = one
    return min(glide(low), glide(high), glide(highest_lift))


# --- rubber ---


def stretch_at(share, at_break):
    return math.sqrt(1 + share**2 * (at_break**2 - 1))


def tested_energy(test, share, at_break):
    """Energy per mass that a stretch test gives a skein wound to this share of its break turns."""
    stretches = [1 + extension / test["length"] for extension in test["extension"]]
    top = max(range(len(stretches)), key=stretches.__getitem__)
    back = list(zip(stretches, test["force"]))[top:][::-1]
    returned = test["calibration"] * test["length"] * work_below(back, stretches[top]) / test["mass"]
    stretch = stretch_at(share, at_break)
    if stretch <= stretches[top]:
        part = work_below(back, stretch) / work_below(back, stretches[top])
    else:
        part = work_below(TRELOAR, stretch) / work_below(TRELOAR, stretches[top])
    return returned * part


def energy_per_rubber(batch, share, given):
    if batch is not None:
        at_break = batch.get("stretch at break", given["stretch at break"])
        tests = [tested_energy(test, share, at_break) for test in batch["tests"]]
        return sum(tests) / len(tests) + batch["next skein"]
    at_break = given["stretch at break"]
    part = work_below(TRELOAR, stretch_at(share, at_break)) / work_below(TRELOAR, at_break)
    return given["energy at break"] * part


# --- all figures of one aircraft ---


def figures(craft, batches, given):
    found = {}
    area = 2 * over_half_span(craft["panels"], lambda y, chord, edge, dihedral: chord)
    chord = 2 / area * over_half_span(craft["panels"], lambda y, chord, edge, dihedral: chord**2)
    edge = 2 / area * over_half_span(craft["panels"], lambda y, chord, edge, dihedral: chord * edge)
    span = craft["span"]
    aspect = span**2 / area
    found["wing-area"] = area
    found["mean-chord"] = area / span
    found["mean-aerodynamic-chord"] = chord
    found["aspect-ratio"] = aspect
    found["effective-dihedral"] = over_half_span(
        craft["panels"], lambda y, chord, edge, dihedral: dihedral * chord * y
    ) / over_half_span(craft["panels"], lambda y, chord, edge, dihedral: chord * y)

    motors = craft["motors"]
    as_written = sum(motor["count"] * motor["mass"] for motor in motors)
    rubber = craft.get("inspected-rubber", as_written)
    masses = [motor["mass"] * rubber / as_written for motor in motors]
    mass = craft["airframe"] + rubber
    weight = mass * GRAVITY
    found["rubber-mass"] = rubber
    found["flying-mass"] = mass
    found["rubber-share"] = rubber / mass
    found["wing-loading"] = weight / area

    tail, fin = craft["tailplane"], craft["fin"]
    volume = tail["area"] * tail["arm"] / (area * chord)
    found["lifting-area"] = area + tail["area"]
    found["tail-volume"] = volume
    found["fin-volume"] = fin["area"] * fin["arm"] / (area * span)

    def slope(ratio):
        return 2 * math.pi * ratio / (2 + math.sqrt(ratio**2 + 4))

    wing_slope, tail_slope = slope(aspect), slope(tail["span"] ** 2 / tail["area"])
    kappa = tail_slope / wing_slope * (1 - 2 * wing_slope / (math.pi * aspect))
    neutral = 0.25 + volume * kappa / (1 + kappa * tail["area"] / area)
    balance = (craft["balance"] - edge) / chord
    found["balance-point"] = balance
    found["neutral-point"] = neutral
    found["static-margin"] = neutral - balance
    found["trim-ballast"] = mass / (craft["balance"] + craft["nose"])

    stored = left = discs = net_torque = 0.0
    for number, (motor, skein) in enumerate(zip(motors, masses), start=1):
        batch = batches.get(motor.get("batch"))
        density = given["density"] if batch is None or "density" not in batch else batch["density"]
        section = skein / (density * motor["length"])
        breaks = motor.get("break-turns", given["turns constant"] * motor["length"] / math.sqrt(section))
        energy = energy_per_rubber(batch, motor["turns"] / breaks, given)
        stored += motor["count"] * skein * energy
        left += motor["count"] * skein * energy_per_rubber(batch, motor["turns-left"] / breaks, given)
        discs += motor["count"] * math.pi / 4 * motor["diameter"] ** 2
        torque = skein * energy / (2 * math.pi * motor["turns"])
        net_torque += motor["count"] * torque * (1 if motor["rotation"] == "clockwise" else -1)
        strip = motor.get("strip") or batch["strip"]
        geometric = density * motor["strands"] * strip["width"] * strip["thickness"] * motor["length"]
        name = f" of motor {number}"
        found["skein-mass-check" + name] = motor["mass"] / geometric
        found["mean-torque" + name] = torque
        found["skein-section" + name] = section
        found["break-turns" + name] = breaks
        found["wound-share" + name] = motor["turns"] / breaks
        found["energy-per-gram-of-rubber" + name] = energy
    found["stored-energy"] = stored
    found["energy-per-gram"] = stored / mass
    found["energy-height"] = stored / weight
    found["net-torque-offset"] = net_torque / weight
    found["duration-per-gram-of-rubber"] = craft["best-time"] / rubber

    temperature = craft["air"].get("temperature", given["temperature"])
    air = air_density(
        temperature,
        craft["air"].get("pressure", given["pressure"]),
        craft["air"].get("humidity", given["humidity"]),
    )
    mu = viscosity(temperature)
    found["air-density"] = air
    propellers = given[motors[0]["after"]] * discs / area
    sink, speed, ratio, lift = steadiest_glide(
        weight, area, chord, aspect, air, mu, given["profile drag factor"],
        given["parasite drag"] + propellers, given["span efficiency"], given["usable lift"],
    )
    found["spiral-balance"] = fin["arm"] / span * math.degrees(found["effective-dihedral"]) / lift
    if "glides" in craft:
        glides = craft["glides"]
        sink = sum(glide["height"] / glide["time"] for glide in glides) / len(glides) * craft["sink factor"]
        speed = sum(glide["distance"] / glide["time"] for glide in glides) / len(glides)
        ratio = sum(glide["distance"] / glide["height"] for glide in glides) / len(glides)
    found["sink-speed"] = sink
    found["glide-speed"] = speed
    found["glide-ratio"] = ratio
    found["reynolds-number"] = air * speed * chord / mu
    found["power-to-stay-up"] = weight * sink

    height = craft["launch-height"] + given["drop"]
    one = sum(motor["count"] for motor in motors) == 1
    efficiency = given["efficiency of one propeller" if one else "efficiency of several"]
    found["energy-use"] = weight * sink * craft["best-time"] / (stored - left + weight * height)
    found["predicted-time"] = (efficiency * stored + weight * height) / (weight * sink)
    least, _, _, _ = steadiest_glide(weight, area, chord, aspect, air, mu, 1, 0, 1, 1.5)
    found["ceiling-time"] = (0.85 * 15000 * rubber + weight * (height + 5)) / (weight * least)
    return found


# --- uncertainty: each base input moved by its own, one after the other, through everything ---

WITH_UNCERTAINTY = ["wing-loading", "static-margin", "energy-per-gram", "sink-speed", "predicted-time"]


def is_pair(node):
    return isinstance(node, list) and len(node) == 2 and all(isinstance(one, (int, float)) for one in node)


def pairs_in(node, path=()):
    if is_pair(node):
        yield path
    elif isinstance(node, (dict, list)):
        for key, inner in node.items() if isinstance(node, dict) else enumerate(node):
            yield from pairs_in(inner, path + (key,))


def settled(node, moved=None, by=0, path=()):
    """The values alone; the one at `moved` shifted by so many of its uncertainties."""
    if is_pair(node):
        return node[0] + (by * node[1] if path == moved else 0)
    if isinstance(node, dict):
        return {key: settled(inner, moved, by, path + (key,)) for key, inner in node.items()}
    if isinstance(node, list):
        return [settled(inner, moved, by, path + (key,)) for key, inner in enumerate(node)]
    return node


def spread(compute, inputs):
    """Standard uncertainty of every figure of compute(values), to first order."""
    squares = {}
    for path in pairs_in(inputs):
        up, down = compute(settled(inputs, path, 1)), compute(settled(inputs, path, -1))
        for name in up:
            squares[name] = squares.get(name, 0.0) + ((up[name] - down[name]) / 2) ** 2
    return {name: math.sqrt(square) for name, square in squares.items()}


def deviation(values):
    mean = sum(values) / len(values)
    return math.sqrt(sum((value - mean) ** 2 for value in values) / (len(values) - 1))


def prepared(craft, batches):
    """Base inputs with lists of tests made one input each."""
    craft = json.loads(json.dumps(craft))
    for motor in craft["motors"]:
        if "break-turns" in motor:
            tests = motor["break-turns"]
            mean = sum(tests) / len(tests)
            motor["break-turns"] = [mean, max(deviation(tests), 0.05 * mean)]
    names = {motor["batch"] for motor in craft["motors"] if "batch" in motor}
    used = {name: json.loads(json.dumps(batches[name])) for name in names}
    for name, batch in used.items():
        # Every motor of these aircraft that has this batch is wound to the same share.
        motor = next(motor for motor in craft["motors"] if motor.get("batch") == name)
        share = motor["turns"][0] / motor["break-turns"][0]
        # One stretch at break for the whole batch, of the strands that were pulled until they broke: mean and scatter.
        tops = [1 + max(test["extension"]) / test["length"][0] for test in batch["tests"] if test["broke"]]
        if tops:
            batch["stretch at break"] = [sum(tops) / len(tops), deviation(tops) if len(tops) > 1 else 0.0]
        at_break = batch.get("stretch at break", DEFAULTS["stretch at break"])[0]
        results, own = [], []
        for test in batch["tests"]:
            test["calibration"] = [1.0, 0.03]
            single = lambda values: {"energy": tested_energy(values, share, at_break)}
            results.append(single(settled(test))["energy"])
            own.append(spread(single, test)["energy"])
        # The next skein is one more of them: their scatter stands for the tests' own uncertainties.
        batch["next skein"] = [0.0, max([deviation(results), *own])]
        batch["tests"] = [settled(test) for test in batch["tests"]]
    if "glides" in craft:
        glides = craft["glides"]
        sink = lambda values: {"sink": sum(each["height"] / each["time"] for each in values) / len(values)}
        mean = sink(settled(glides))["sink"]
        scatter = deviation([each["height"] / each["time"] for each in settled(glides)]) / math.sqrt(len(glides))
        craft["sink factor"] = [1.0, max(math.hypot(spread(sink, glides)["sink"], scatter) / mean, 0.15)]
        craft["glides"] = settled(glides)
    return {"craft": craft, "batches": used, "given": DEFAULTS}


def batch_figures(batch):
    """Energies on the way out and back per mass, and their quotient: the mean of the tests."""
    rows = []
    for test in map(settled, batch["tests"]):
        points = list(zip(test["extension"], test["force"]))
        top = max(range(len(points)), key=lambda at: points[at][0])
        energy_in = work_below(points[: top + 1], points[top][0]) / test["mass"]
        energy_out = work_below(points[top:][::-1], points[top][0]) / test["mass"]
        rows.append((energy_in, energy_out, energy_out / energy_in))
    means = [sum(column) / len(rows) for column in zip(*rows)]
    return dict(zip(["stretch-energy-in", "stretch-energy-out", "return-ratio"], means))


def twelve(value):
    return float(f"{value:.12g}")


def main():
    inputs = json.loads((HERE / "second-opinion-inputs.json").read_text(encoding="utf-8"))
    opinion = {"aircraft": {}, "batches": {}}
    for name, craft in inputs["aircraft"].items():
        base = prepared(craft, inputs["batches"])
        compute = lambda values: figures(values["craft"], values["batches"], values["given"])
        values, u = compute(settled(base)), spread(compute, base)
        opinion["aircraft"][name] = {
            "figures": {figure: twelve(value) for figure, value in values.items()},
            "uncertainties": {figure: twelve(u[figure]) for figure in WITH_UNCERTAINTY},
        }
    for name, batch in inputs["batches"].items():
        opinion["batches"][name] = {figure: twelve(value) for figure, value in batch_figures(batch).items()}
    # Exponents without a leading zero, as the project's formatter wants them.
    text = json.dumps(opinion, indent=2).replace("e-0", "e-") + "\n"
    (HERE / "second-opinion.json").write_text(text, encoding="utf-8")


main()
