"""The ladders, read from the catalogue that is built into the engine: data, not rules."""

import json

from . import own


class Catalogue:
    """Ladders, variants with their places, and the mean c of each group."""

    def __init__(self, ladders, slopes):
        self.ladders = {ladder["id"]: ladder for ladder in ladders}
        self.slopes = slopes
        self.places = {
            variant["id"]: (ladder, level, variant)
            for ladder in ladders
            for level, step in enumerate(ladder["levels"])
            for variant in step["variants"]
        }

    @classmethod
    def read(cls, path):
        """The built-in one."""
        whole = json.loads(path.read_text(encoding="utf-8"))
        return cls(whole["ladders"], {group["id"]: group["prior_c"] for group in whole["groups"]})

    def with_own(self, records):
        """The same with the coach's own ladders and moves over it."""
        return Catalogue(*own.laid_over(list(self.ladders.values()), self.slopes, records)) if records else self

    def variant(self, ident):
        return self.places[ident][2]

    def mean_c(self, group):
        return self.slopes[group]
