"""How the screen looks: white on black for daylight, one warm colour for answers, one cool colour for headings."""

from __future__ import annotations

from textual.theme import Theme

# A screen of at least this many columns has room for the sheet beside the working.
TWO_COLUMNS = 100

SITE = Theme(
    name="site",
    primary="#8fd3ff",
    secondary="#8fd3ff",
    accent="#ffd75f",
    warning="#ffb86b",
    error="#ff9a8f",
    success="#9be28f",
    foreground="#ffffff",
    background="#000000",
    surface="#000000",
    panel="#1c1c1c",
    dark=True,
)

CSS = """
Screen { layout: vertical; }
#desk { height: 1fr; layout: vertical; }
.wide #desk { layout: horizontal; }

Sheet {
    height: 6; padding: 0 1; scrollbar-size-vertical: 1; background: $background;
    border: none; border-bottom: solid $primary;
}
.wide Sheet { width: 2fr; height: 1fr; border-bottom: none; border-right: solid $primary; }
.narrow.on-sheet Sheet { height: 1fr; border-bottom: none; }
.narrow.on-sheet Working { height: 0; }
Sheet > .option-list--option-highlighted { background: $panel; color: $accent; text-style: bold; }
Sheet:focus > .option-list--option-highlighted { background: $accent; color: $background; text-style: bold; }
Sheet > .option-list--option-disabled { color: $primary; text-style: bold; }

Working { width: 1fr; height: 1fr; padding: 0 1 0 0; scrollbar-size-vertical: 1; border-left: blank; }
Working:focus { border-left: heavy $accent; }
.wide Working { width: 3fr; }
Working > Static { width: 1fr; height: auto; }

Line { height: 3; border: heavy $primary; padding: 0 1; background: $background; }
Line > .input--placeholder { color: #b0b0b0; }
Line:focus { border: heavy $accent; }
Foot { height: 1; padding: 0 1; color: $foreground; background: $panel; }

Help { align: center middle; background: $background 60%; }
Help > VerticalScroll {
    width: 90%; max-width: 90; height: 90%; border: heavy $accent; padding: 0 2; background: $background;
}
Help Static { height: auto; }
"""
