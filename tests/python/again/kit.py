"""What is held, what the muscles move, and the loads that a kit can make (5.1)."""

from itertools import combinations

from .constants import ASSUMED_BODY_KG, G, GOES_ON, KG_PER_LB, LEAST_EFFECTIVE_KG


def kilograms(weight):
    """A weight as entered, in kg."""
    return weight["value"] * (KG_PER_LB if weight["unit"] == "lb" else 1.0)


def band_force(band, stretch):
    """Force of a band in newtons at a stretch (1.0 is 100 %): on the line through 100 % and 200 % down to 50 %, then to zero."""
    line = lambda s: band["at_100"] + (band["at_200"] - band["at_100"]) * (s - 1.0)
    if stretch >= 0.5:
        return max(line(stretch), 0.0)
    return max(line(0.5), 0.0) * stretch / 0.5


def stretch_of(variant):
    """Stretch of the band at the hardest point; 0 where there is none."""
    return variant["loading"].get("stretch", 0.0)


def external(variant, load):
    """What is held, in kg; what a band carries of her counts below zero."""
    make = load["make"]
    if make == "nothing":
        return 0.0
    if make == "one":
        return kilograms(load["weight"])
    if make == "pair":
        return 2.0 * kilograms(load["weight"])
    if make == "barbell":
        return kilograms(load["bar"]) + 2.0 * sum(kilograms(p) for p in load["plates"])
    pull = sum(band_force(b, stretch_of(variant)) / G for b in load["bands"])
    return pull if make == "bands" else -pull


def effective(variant, load, body_kg):
    """Effective load in kg: external + share x body mass - assistance, always above zero; None where nothing is moved."""
    held = external(variant, load)
    if not variant.get("share"):
        return held if held > 0 else None
    body = ASSUMED_BODY_KG if body_kg is None else body_kg
    return max(held + variant["share"]["share"] * body, LEAST_EFFECTIVE_KG)


def eased(ladder):
    """Something of a ladder is held or has a strength state: eased, it is done with the least that there is. What goes on
    while all else rests goes on in a warm-up, too."""
    every = [v for level in ladder["levels"] for v in level["variants"]]
    return ladder["pattern"] not in GOES_ON and any(v.get("group") or v["loading"]["with"] != "body" for v in every)


def loads(variant, kit):
    """The loads that her kit can really make for a variant, lightest first, each external load once."""
    way = variant["loading"]["with"]
    bells = kit.get("dumbbells", [])
    bands = kit.get("bands", [])
    beside = [list(s) for n in (1, 2) for s in combinations(bands, n)]
    if way == "body":
        made = [{"make": "nothing"}]
    elif way == "one":
        made = [{"make": "one", "weight": d["weight"]} for d in bells]
    elif way == "pair":
        made = [{"make": "pair", "weight": d["weight"]} for d in bells if d["pair"]]
    elif way == "barbell":
        bar = kit.get("barbell")
        plates = [p["weight"] for p in bar["plates"]] if bar else []
        # Counted in binary, the first pair as the lowest digit: of two choices of one weight the first is taken.
        every = range(2 ** len(plates)) if bar else []
        chosen = [[p for place, p in enumerate(plates) if n >> place & 1] for n in every]
        made = [{"make": "barbell", "bar": bar["bar"], "plates": p} for p in chosen]
    elif way == "band":
        made = [{"make": "bands", "bands": s} for s in beside]
    else:
        made = [{"make": "assist", "bands": s} for s in beside]
    made.sort(key=lambda load: external(variant, load))
    once = []
    for load in made:
        if not once or external(variant, load) - external(variant, once[-1]) >= 1e-9:
            once.append(load)
    return once
