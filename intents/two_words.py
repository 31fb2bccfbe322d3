"""Names that are written in two words and are one thing: feather edge, per cent."""

from __future__ import annotations

from intents.tokens import Token

_PAIRS = {
    ("feather", "edge"): "featheredge", ("feather", "edged"): "featheredge", ("weather", "board"): "weatherboard",
    ("weather", "boards"): "weatherboards", ("weather", "boarding"): "weatherboards", ("ship", "lap"): "shiplap",
    ("per", "cent"): "percent",
}  # fmt: skip
_FIRST = frozenset(first for first, _ in _PAIRS)


def put_together(tokens: list[Token]) -> list[Token]:
    """The tokens with each such name in one word, a hyphen between or none."""
    if _FIRST.isdisjoint(token.text for token in tokens):
        return tokens
    found: list[Token] = []
    at = 0
    while at < len(tokens):
        end = at + 1 + (tokens[at + 1 : at + 2] != [] and tokens[at + 1].text == "-")
        whole = _PAIRS.get((tokens[at].text, tokens[end].text)) if end < len(tokens) else None
        found.append(Token(whole, tokens[at].start, tokens[end].end) if whole else tokens[at])
        at = end + 1 if whole else at + 1
    return found
