"""The filter, the effort of a day, the choice of level and load, and the set in hand, written once more from the words of
the design, docs/engine.md and docs/rules.md.

Nothing here is shared with the engine but the catalogue and the records of a log. Where both agree on thousands of
logs, a slip of the pen in either of them is unlikely. Where the design is silent, this follows the engine, and
READINGS.md says so. Paragraphs (5.1 to 5.4) are those of the design.
"""
