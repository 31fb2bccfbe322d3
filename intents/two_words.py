"""Names that are written in two words and are one thing: feather edge, per cent; and "to the sixteenth", which is the nearest."""

from __future__ import annotations

from intents.tokens import Token

_PAIRS = {
    ("feather", "edge"): "featheredge", ("feather", "edged"): "featheredge", ("weather", "board"): "weatherboard",
    ("weather", "boards"): "weatherboards", ("weather", "boarding"): "weatherboards", ("ship", "lap"): "shiplap",
    ("per", "cent"): "percent", ("angle", "iron"): "iron", ("angle", "irons"): "irons",
}  # fmt: skip
_FIRST = frozenset(first for first, _ in _PAIRS)


_MARKS = frozenset("quarter eighth sixteenth 4th 8th 16th 32nd 64th".split())
_ENDS = frozenset((".", "?", "!", ",", "please"))


def _to_the_nearest(tokens: list[Token]) -> list[Token]:
    """The tokens with "nearest" for the article of a mark that an answer is to be read to, at the end of a clause."""
    for at, (to, the, mark) in enumerate(zip(tokens, tokens[1:], tokens[2:], strict=False)):
        if to.text == "to" and the.text in ("the", "a") and mark.text in _MARKS:
            after = tokens[at + 3].text if at + 3 < len(tokens) else "."
            if after in _ENDS:
                return [*tokens[: at + 1], Token("nearest", the.start, the.end), *_to_the_nearest(tokens[at + 2 :])]
    return tokens


def put_together(tokens: list[Token]) -> list[Token]:
    """The tokens with each such name in one word, a hyphen between or none."""
    tokens = _to_the_nearest(tokens)
    if _FIRST.isdisjoint([token.text for token in tokens]):
        return tokens
    found: list[Token] = []
    at = 0
    while at < len(tokens):
        end = at + 1 + (tokens[at + 1 : at + 2] != [] and tokens[at + 1].text == "-")
        whole = _PAIRS.get((tokens[at].text, tokens[end].text)) if end < len(tokens) else None
        found.append(Token(whole, tokens[at].start, tokens[end].end) if whole else tokens[at])
        at = end + 1 if whole else at + 1
    return found
