"""`lathmark notebook`: the day, one working again, search, the order list, and merging another device's notebook."""

from __future__ import annotations

import argparse
import json
import shutil
from datetime import date
from typing import Any

from assistant.notebook import Notebook
from assistant.notebook_file import NotebookError


def add_notebook(commands: Any) -> None:
    """Add the notebook commands."""
    notebook = commands.add_parser("notebook", help="read the day back, find things, gather the order")
    notebook.set_defaults(run=_day, day=None, json=False)
    notebook.add_argument("--day", metavar="YYYY-MM-DD", help="another day than today")
    notebook.add_argument("--job", metavar="NAME", help="only this job")
    parts = notebook.add_subparsers(title="parts", metavar="")
    show = parts.add_parser("show", help="print one working again")
    show.add_argument("id", help="an entry's id, or a piece of it as listed")
    show.add_argument("--json", action="store_true", help="print the record as one JSON line")
    show.set_defaults(run=_show)
    find = parts.add_parser("find", help="search the notebook")
    find.add_argument("words", nargs="+")
    find.set_defaults(run=_find)
    order = parts.add_parser("order", help="what has been worked out to order")
    order.set_defaults(run=_order)
    merge = parts.add_parser("merge", help="take in the entries of another notebook file")
    merge.add_argument("file")
    merge.set_defaults(run=_merge)


def _width() -> int:
    return shutil.get_terminal_size((100, 24)).columns


def _day(choices: argparse.Namespace) -> None:
    from assistant.notebook_pages import day_page

    with Notebook.open() as notebook:
        entries = notebook.day(_as_date(choices.day), choices.job)
        print(day_page(entries, _width()))


def _show(choices: argparse.Namespace) -> None:
    from assistant.page import page

    with Notebook.open() as notebook:
        record = notebook.get(choices.id).record
    print(json.dumps(record, ensure_ascii=False) if choices.json else page(record, _width()))


def _find(choices: argparse.Namespace) -> None:
    from assistant.notebook_pages import day_page

    with Notebook.open() as notebook:
        print(day_page(notebook.find(" ".join(choices.words), choices.job), _width()))


def _order(choices: argparse.Namespace) -> None:
    from assistant.notebook_pages import order_page

    with Notebook.open() as notebook:
        print(order_page(notebook.order(choices.job, _as_date(choices.day))))


def _merge(choices: argparse.Namespace) -> None:
    with Notebook.open() as notebook:
        print(f"{notebook.merge(choices.file)} entries taken in")


def _as_date(text: str | None) -> date | None:
    if text is None:
        return None
    try:
        return date.fromisoformat(text)
    except ValueError:
        raise NotebookError(f"{text} is not a day: write it as 2026-05-04") from None
