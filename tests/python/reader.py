"""What a screen reader is told: the accessibility tree (AT-SPI 2) of the window that runs, as lines.

Run on a session bus of its own by `cargo xtask reader`; the process id of the window is the one argument. Each line is a
role, the name that is read, and what state it is in; children are indented. What has no name, text or state is passed
over, as a reader passes it over.
"""

import sys

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi

STATES = {
    Atspi.StateType.PRESSED: "pressed",
    Atspi.StateType.CHECKED: "checked",
    Atspi.StateType.EXPANDED: "open",
    Atspi.StateType.SELECTED: "selected",
    Atspi.StateType.FOCUSED: "has the focus",
}


def told(node):
    """The name, or the text where there is none."""
    name = (node.get_name() or "").strip()
    if not name and node.get_text_iface() is not None:
        text = node.get_text_iface()
        name = Atspi.Text.get_text(text, 0, Atspi.Text.get_character_count(text)).strip()
    return " ".join(name.replace("\N{OBJECT REPLACEMENT CHARACTER}", " ").split())


def lines(node, depth, seen):
    role, name = node.get_role_name(), told(node)
    states = node.get_state_set()
    said = [word for state, word in STATES.items() if states.contains(state)]
    if not states.contains(Atspi.StateType.SENSITIVE) and role == "push button":
        said.append("cannot be pressed")
    more = node.get_description()
    # What only repeats the name above it is one thing to a reader.
    shown = bool(name or said) and (name != seen or bool(said))
    if shown:
        words = f"{role}: {name}" if name else role
        words += f" ({more})" if more else ""
        words += f" [{', '.join(said)}]" if said else ""
        print("  " * depth + words)
    for index in range(node.get_child_count()):
        child = node.get_child_at_index(index)
        if child is not None:
            lines(child, depth + shown, name or seen)


def documents(node):
    if node.get_role() == Atspi.Role.DOCUMENT_WEB:
        yield node
        return
    for index in range(node.get_child_count()):
        child = node.get_child_at_index(index)
        if child is not None:
            yield from documents(child)


def main():
    Atspi.init()
    desktop = Atspi.get_desktop(0)
    found = 0
    for index in range(desktop.get_child_count()):
        for document in documents(desktop.get_child_at_index(index)):
            found += 1
            lines(document, 0, "")
    if found == 0:
        sys.exit("no page is on the accessibility bus")


main()
