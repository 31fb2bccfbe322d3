"""What a solver may say instead of an answer."""

from __future__ import annotations


class Refusal(Exception):
    """No answer can be right: the message names what is wrong, in words a person would use."""


class NeedMore(Exception):
    """One more piece is needed before this can be worked: the parameter, and the question for it ("" asks its own)."""

    def __init__(self, parameter: str, question: str = "") -> None:
        super().__init__(question or parameter)
        self.parameter, self.question = parameter, question


class NotSure(Exception):
    """The working's own check did not hold; nothing is to be cut by it."""
