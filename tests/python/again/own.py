"""The coach's own ladders and moves, laid over the built-in catalogue."""

CAUTIONS = ("one_sided", "wrist", "midline", "overhead", "impact", "pelvic_hold")
GOES_ON = ("breathing", "pelvic_floor", "mobility")
LOWER = ("squat", "hinge", "bridge", "single_leg", "hip_abduction", "hip_adduction", "calf", "carry", "balance", "impact")
UPPER = ("horizontal_push", "vertical_push", "horizontal_pull", "vertical_pull", "arms")
# Reps per unit of ln load where nothing in the catalogue comes near: as in most of its groups.
MEAN_C = 38.0
# What a variant is; the rest may change under its id.
IS = ("ladder", "level", "like", "position", "loading", "share", "per_side")


def standing(records):
    """Of each id what was written last; a record that would make another thing of it has no effect."""
    ladders, variants = {}, {}
    for record in sorted(records, key=lambda r: (r["at"], r["device"], r["seq"])):
        payload = record["payload"]
        if payload["kind"] == "own_ladder":
            old = ladders.get(payload["id"], payload)
            if old["pattern"] == payload["pattern"]:
                ladders[payload["id"]] = payload
        elif payload["kind"] == "own_variant":
            old = variants.get(payload["id"], payload)
            same = all(old.get(what) == payload.get(what) for what in IS)
            if same and timed(old) == timed(payload):
                variants[payload["id"]] = payload
    return list(ladders.values()), list(variants.values())


def timed(variant):
    return variant["ready"]["by"] == "seconds"


def cautions(own, pattern):
    """Those said yes to, those not answered, and those that lie in the thing itself."""
    implied = {
        "overhead": own["position"] == "hanging" or pattern in ("vertical_push", "vertical_pull"),
        "impact": pattern == "impact",
        "pelvic_hold": pattern == "pelvic_floor",
    }
    return [c for c in CAUTIONS if implied.get(c) or own.get("cautions", {}).get(c, True)]


def laid_over(ladders, groups, records):
    """Ladders with what is hers, and the mean c of each group with those of her moves."""
    own_ladders, own_variants = standing(records)
    built_in = {v["id"]: v for ladder in ladders for step in ladder["levels"] for v in step["variants"]}
    slopes = dict(groups)

    def made(own, pattern, retired):
        variant = {key: own.get(key) for key in ("id", "position", "loading", "ready")}
        variant |= {"needs": own.get("needs", []), "per_side": own.get("per_side", False)}
        variant |= {"cautions": cautions(own, pattern), "retired": own.get("retired", False) or retired}
        if own.get("share"):
            variant["share"] = {"share": own["share"]}
        if own["loading"]["with"] != "body" and not timed(own):
            # Nobody knows whether two of hers can be compared: each has a state of its own.
            variant["group"] = f"own-{own['id']}"
            like = built_in.get(own.get("like"), {}).get("group")
            near = next(
                (
                    v["group"]
                    for ladder in ladders
                    if ladder["pattern"] == pattern
                    for step in ladder["levels"]
                    for v in step["variants"]
                    if v.get("group")
                ),
                None,
            )
            slopes[variant["group"]] = groups.get(like) or groups.get(near) or MEAN_C
        return variant

    def placed(ladder, retired=False):
        levels, appended = [list(step["variants"]) for step in ladder["levels"]], {}
        hers = [v for v in own_variants if v["ladder"] == ladder["id"] and ladder["pattern"] not in GOES_ON]
        for own in sorted(hers, key=lambda v: v["level"]):
            # One above the highest begins a new level; a gap closes. Two of one level stand side by side.
            variant = made(own, ladder["pattern"], retired)
            at = own["level"]
            if at in appended:
                levels[appended[at]].append(variant)
            elif at < len(levels):
                levels[at].append(variant)
            else:
                appended[at] = len(levels)
                levels.append([variant])
        return {**ladder, "levels": [{"variants": variants} for variants in levels]}

    over = [placed(dict(ladder)) for ladder in ladders]
    for own in own_ladders:
        region = "lower" if own["pattern"] in LOWER else "upper" if own["pattern"] in UPPER else "trunk"
        ladder = placed({"id": own["id"], "pattern": own["pattern"], "region": region, "levels": []}, own.get("retired", False))
        if ladder["levels"]:
            over.append(ladder)
    return over, slopes
