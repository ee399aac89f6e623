"""Conditions that screening names, as far as the cases draw them (docs/rules.md)."""


class Condition:
    """When it counts, what is asked for, what it rules out."""

    def __init__(self, when="any", asks=None, stricter_from=None, rules_out=None, extra_reserve=0.0):
        self.when, self.asks, self.stricter_from = when, asks, stricter_from
        self.rules_out, self.extra_reserve = rules_out, extra_reserve

    def counts(self, pregnant):
        return self.when == "any" or pregnant

    def asked(self, pregnant, week):
        """What training waits for: None, the provider, or a clearance."""
        late = self.stricter_from is not None and pregnant and week >= self.stricter_from
        return "clearance" if late else self.asks


CONDITIONS = {
    "anaemia": Condition(extra_reserve=1.0),
    "anaemia-felt": Condition(asks="provider", extra_reserve=1.0),
    "wrist-pain": Condition(rules_out="wrist"),
    "shoulder-pain": Condition(rules_out="overhead"),
    "girdle-pain": Condition(rules_out="one_sided"),
    "prolapse": Condition(rules_out="impact"),
    "pelvic-floor-tense": Condition(rules_out="pelvic_hold"),
    "gestational-diabetes": Condition(),
    "twins": Condition("pregnant", "provider"),
    "placenta-praevia": Condition("pregnant", "provider", stricter_from=26),
    "thyroid-unsettled": Condition(asks="clearance"),
}
