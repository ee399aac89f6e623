"""The ladders, read from the catalogue that is built into the engine: data, not rules."""

import json


class Catalogue:
    """Ladders, variants with their places, and the mean c of each group."""

    def __init__(self, path):
        whole = json.loads(path.read_text(encoding="utf-8"))
        self.ladders = {ladder["id"]: ladder for ladder in whole["ladders"]}
        self.slopes = {group["id"]: group["prior_c"] for group in whole["groups"]}
        self.places = {
            variant["id"]: (ladder, level, variant)
            for ladder in whole["ladders"]
            for level, step in enumerate(ladder["levels"])
            for variant in step["variants"]
        }

    def variant(self, ident):
        return self.places[ident][2]

    def mean_c(self, group):
        return self.slopes[group]
