"""Finds room for the words of a drawing: never on a line, never on each other, as near as can be to their place."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache
from itertools import pairwise

Point = tuple[float, float]

REACH_COLUMNS, REACH_LINES = 16, 6  # how far a word may stray before a key letter stands in for it
KEYS = "abcdefghijklmnopqrstuvwxyz"


@dataclass(frozen=True, slots=True)
class Wish:
    """Words wanted at a point (device units), leaning away from it by a unit vector; (0, 0) centres them on it.

    `level` words may only move sideways and `square` ones only up and down: the readings of a pole or strip.
    """

    text: str
    at: Point
    lean: Point
    level: bool = False
    square: bool = False

    def box(self, cell: Point, rows: int) -> tuple[float, float, float, float]:
        """Left, top, width and height wished for, in device units."""
        wide, high = len(self.text) * cell[0], rows * cell[1]
        x = self.at[0] + self.lean[0] * (wide / 2 + 1.5 * cell[0])
        y = self.at[1] + self.lean[1] * (high / 2 + high / 4)
        return x - wide / 2, y - high / 2, wide, high


@dataclass(frozen=True, slots=True)
class Word:
    """Words placed: the column and row of their first cell; lean is 1 to start there, −1 to end, 0 for the middle."""

    text: str
    column: int
    row: int
    lean: int = 0


@cache
def nearby(rows: int, level: bool, square: bool) -> list[tuple[int, int]]:
    """Moves in cells, nearest first, for words `rows` cells high; a line's height counts as two columns."""
    columns = range(0, 1) if square else range(-REACH_COLUMNS, REACH_COLUMNS + 1)
    lines = range(0, 1) if level else range(-REACH_LINES * rows, REACH_LINES * rows + 1)
    moves = [(column, row) for column in columns for row in lines]
    return sorted(moves, key=lambda move: (move[0] ** 2 + (2 * move[1] / rows) ** 2, move))


class Room:
    """Which cells are taken: one whole number a row, one bit a column, so that a word is tested in one step."""

    def __init__(self, columns: int, rows: int) -> None:
        self.columns = columns
        self.taken = [0] * rows

    def cross(self, points: list[Point], cell: Point) -> None:
        """Takes every cell that a run of straight pieces passes through."""
        wide, high = cell
        for (ax, ay), (bx, by) in pairwise(points):
            count = max(1, math.ceil(max(abs(bx - ax) / wide, abs(by - ay) / high) * 4))
            for i in range(count + 1):
                column, row = int((ax + (bx - ax) * i / count) // wide), int((ay + (by - ay) * i / count) // high)
                if 0 <= row < len(self.taken) and 0 <= column < self.columns:
                    self.taken[row] |= 1 << column

    def free(self, column: int, row: int, wide: int, rows: int) -> bool:
        """Whether a word of `wide` × `rows` cells fits there."""
        if column < 0 or row < 0 or column + wide > self.columns or row + rows > len(self.taken):
            return False
        span = ((1 << wide) - 1) << column
        return not any(self.taken[r] & span for r in range(row, row + rows))

    def take(self, column: int, row: int, wide: int, rows: int) -> None:
        """Takes a word's cells and one on each side, so that two words never run together."""
        span = ((1 << (wide + 2)) - 1) << column >> 1
        for r in range(row, row + rows):
            self.taken[r] |= span


def place_words(wishes: list[Wish], room: Room, cell: Point, rows: int) -> tuple[list[Word], list[str]]:
    """A place for each wish, its words `rows` cells high; one without room gets a key letter and a note."""
    words: list[Word] = []
    notes: list[str] = []
    keys = iter(KEYS)
    for wish in wishes:
        word = find_room(wish, room, cell, rows) if wish.text else None
        if not word and wish.text and not (wish.level or wish.square):
            key = next(keys, "")
            word = find_room(Wish(key, wish.at, wish.lean), room, cell, rows) if key else None
            notes.append(f"{key}: {wish.text}" if word else wish.text)
        words += [word] if word else []
    return words, notes


def find_room(wish: Wish, room: Room, cell: Point, rows: int) -> Word | None:
    """The nearest free cells for one wish, then taken; clear of lines by a cell where possible, None if full."""
    x, y, _, _ = wish.box(cell, rows)
    column, row = math.floor(x / cell[0] + 0.5), math.floor(y / cell[1] + 0.5)
    wide = len(wish.text)
    moves = nearby(rows, wish.level, wish.square)
    for clear, tries in ((1, moves[: len(moves) // 6]), (0, moves)):
        for across, down in tries:
            if room.free(column + across - clear, row + down, wide + 2 * clear, rows):
                room.take(column + across, row + down, wide, rows)
                return Word(wish.text, column + across, row + down, round(wish.lean[0]))
    return None
