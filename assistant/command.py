"""The command line: ask, hear, notebook, say-what; with no command, the screen. argparse, since it starts at once."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING, TextIO

from assistant import garbage
from assistant.notebook_file import NotebookError

if TYPE_CHECKING:
    from assistant.desk import Desk
    from assistant.record import Record

UNUSABLE = 2


class Unusable(Exception):
    """Arguments or input that can't be used: one clear line."""


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command; 0, or 2 with one line on standard error."""
    with garbage.put_off():
        return _run(build_parser().parse_args(arguments))


def _run(choices: argparse.Namespace) -> int:
    try:
        return int(choices.run(choices) or 0)
    except (Unusable, NotebookError) as problem:
        print(f"lathmark: {problem}", file=sys.stderr)
        return UNUSABLE
    except BrokenPipeError:
        sys.stderr.close()
        return 0
    except KeyboardInterrupt:
        return 130


class _Parser(argparse.ArgumentParser):
    def error(self, message: str) -> None:  # type: ignore[override]
        self.exit(UNUSABLE, f"lathmark: {message}; `{self.prog} --help` shows how\n")


def build_parser() -> argparse.ArgumentParser:
    """The parser of all commands."""
    parser = _Parser(prog="lathmark", description="Ask a job question, check its working, keep the day.")
    parser.set_defaults(run=_screen, job=None, no_notebook=False)
    commands = parser.add_subparsers(title="commands", metavar="")
    ask = commands.add_parser("ask", help="answer a question, or with - one a line from standard input")
    ask.add_argument("words", nargs="+", help="the question, or - to read one question a line")
    ask.add_argument("--why-match", action="store_true", help="show how the sentence was read")
    _shared(ask, _ask)
    hear = commands.add_parser("hear", help="answer recorded speech")
    hear.add_argument("files", nargs="+", metavar="FILE.wav")
    hear.add_argument("--fresh", action="store_true", help="start a conversation for each file")
    _shared(hear, _hear)
    ears = commands.add_parser("ears", help="which ear is in use; add PATH takes in a better one")
    ears.add_argument("add", nargs="*", metavar="add PATH", help="a Vosk model, as a folder or a ZIP")
    ears.set_defaults(run=_ears)
    what = commands.add_parser("say-what", help="what can be asked, with examples that work")
    what.add_argument("topic", nargs="*", help="a topic, or part of its name")
    what.set_defaults(run=_say_what)
    from assistant.command_notebook import add_notebook

    add_notebook(commands)
    return parser


def _shared(parser: argparse.ArgumentParser, run: object) -> None:
    parser.add_argument("--json", action="store_true", help="print the record as one JSON line")
    parser.add_argument("--job", metavar="NAME", help="the job whose remembered values are used and kept")
    parser.add_argument("--no-notebook", action="store_true", help="write nothing down")
    parser.set_defaults(run=run)


def _desk(choices: argparse.Namespace, keep: bool) -> Desk:
    """A desk, loaded."""
    from assistant.desk import Desk

    desk = Desk(choices.job, keep)
    garbage.loaded()
    return desk


def _ask(choices: argparse.Namespace) -> int:
    text = " ".join(choices.words)
    if choices.why_match:
        from assistant.why_match import why_match

        print(why_match(text))
        return 0
    with _desk(choices, keep=not choices.no_notebook) as desk:
        if text == "-":
            _converse(desk, choices, sys.stdin)
            return 0
        if not text.strip():
            raise Unusable("there are no words to answer: ask like  lathmark ask \"miter for a 5 in 12 rake return\"")
        _show(desk.answer(text), choices.json)
    return 0


def _converse(desk: Desk, choices: argparse.Namespace, lines: TextIO) -> None:
    garbage.only_between_lines()
    for count, line in enumerate(_lines(lines), 1):
        if line.strip():
            _show(desk.answer(line), choices.json)
        else:
            desk.fresh()
        garbage.between_lines(count)


def _lines(source: TextIO) -> Iterator[str]:
    """Lines as text, whatever bytes come: what is not UTF-8 is read with marks in its place."""
    for raw in source.buffer if hasattr(source, "buffer") else source:
        line = raw.decode("utf-8", errors="replace") if isinstance(raw, bytes) else raw
        yield line.rstrip("\r\n")


def _hear(choices: argparse.Namespace) -> int:
    from assistant.ears import EarError, hear_file

    with _desk(choices, keep=not choices.no_notebook) as desk:
        for file in choices.files:
            if choices.fresh:
                desk.fresh()
            try:
                heard = hear_file(file)
            except EarError as problem:
                raise Unusable(str(problem)) from None
            _show(desk.answer_heard(heard, file), choices.json)
    return 0


def _show(record: Record, as_json: bool) -> None:
    if as_json:
        print(json.dumps(record, ensure_ascii=False), flush=True)
        return
    import shutil

    from assistant.page import page

    ascii_only = (sys.stdout.encoding or "ascii").lower().replace("-", "") not in ("utf8", "utf16")
    print(page(record, shutil.get_terminal_size((80, 24)).columns, ascii_only), flush=True)


def _ears(choices: argparse.Namespace) -> int:
    from assistant.ears import EarError
    from assistant.ears.installed import add_model, model_folder

    if choices.add:
        if len(choices.add) != 2 or choices.add[0] != "add":
            raise Unusable("say `lathmark ears add FOLDER-or-ZIP`, or `lathmark ears` alone")
        try:
            print(f"The ear listens with {add_model(choices.add[1])} from now on.")
        except (EarError, OSError) as problem:
            raise Unusable(str(problem)) from None
        return 0
    model = model_folder()
    named = f"the Vosk model {model.name}" if model else "PocketSphinx, which came with it"
    print(f"The ear listens with {named}.")
    return 0


def _say_what(choices: argparse.Namespace) -> int:
    from assistant.say_what import say_what

    text = say_what(" ".join(choices.topic))
    if text is None:
        raise Unusable(f"there is no topic like {' '.join(choices.topic)!r}: `lathmark say-what` lists them all")
    print(text)
    return 0


def _screen(choices: argparse.Namespace) -> int:
    from assistant.screen import run

    with _desk(choices, keep=True) as desk:
        run(desk)
    return 0
