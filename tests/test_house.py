"""The house stands as drawn: imports one way, only what belongs at the top, short files and functions, no network."""

from __future__ import annotations

import ast
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
TOP = {"README.md", "DEVELOPERS.md", "pyproject.toml", "assistant", "grammars", "intents", "solvers", "tests"}
LEFT_BY_TOOLS = {"build", "dist"}  # what building a wheel leaves; git ignores it
MAY_IMPORT = {
    "solvers": {"solvers"},
    "intents": {"intents", "solvers"},
    "assistant": {"assistant", "intents", "solvers"},
}
FROM_SOLVERS = {"solvers.quantities", "solvers.slots", "solvers.sums"}  # all that intents may know: no formula
NETWORK = {"socket", "ssl", "urllib", "http", "ftplib", "smtplib", "xmlrpc", "requests", "httpx", "aiohttp"}
LOCAL = {"urllib.parse"}  # takes text apart, opens nothing
LINES, FUNCTION_LINES, LONG_FUNCTIONS = 400, 30, 0.05  # a twentieth of the functions may be longer, none twice as long

CODE = sorted(path for folder in MAY_IMPORT for path in (ROOT / folder).rglob("*.py"))
ALL = sorted([*CODE, *(ROOT / "tests").rglob("*.py"), *(ROOT / "grammars").glob("*.jsgf")])


def named(path: Path) -> str:
    return str(path.relative_to(ROOT))


def imports(path: Path) -> Iterator[str]:
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{named(path)}: imports are written in full"
            module = node.module or ""
            yield from (f"{module}.{alias.name}" if module in MAY_IMPORT else module for alias in node.names)


def test_the_top_holds_the_five_folders_and_three_files() -> None:
    there = {path.name for path in ROOT.iterdir() if not path.name.startswith(".")} - LEFT_BY_TOOLS
    assert there - TOP == set()
    assert TOP - there == set()


@pytest.mark.parametrize("folder", MAY_IMPORT)
def test_nothing_imports_back_up(folder: str) -> None:
    ours = set(MAY_IMPORT) | {"tests"}
    wrong = [
        f"{named(path)} imports {name}"
        for path in CODE
        if path.relative_to(ROOT).parts[0] == folder
        for name in imports(path)
        if name.split(".")[0] in ours - MAY_IMPORT[folder]
    ]
    assert wrong == []


def test_intents_know_no_formula() -> None:
    wrong = [
        f"{named(path)} imports {name}"
        for path in (ROOT / "intents").rglob("*.py")
        for name in imports(path)
        if name.split(".")[0] in ("solvers", "sympy", "mpmath") and not name.startswith(tuple(FROM_SOLVERS))
    ]
    assert wrong == []


def test_solvers_know_no_words_and_touch_no_disk() -> None:
    wrong = [
        f"{named(path)} imports {name}"
        for path in (ROOT / "solvers").rglob("*.py")
        for name in imports(path)
        if name.split(".")[0] in {"os", "pathlib", "json", "sqlite3", "textual", "pocketsphinx", "vosk", "subprocess"}
    ]
    assert wrong == []


def test_grammars_are_data_alone() -> None:
    kinds = {path.suffix for path in (ROOT / "grammars").iterdir() if path.is_file()}
    assert kinds == {".jsgf", ".json", ".npz"}  # what people say, and what was learned from it


def test_no_code_of_ours_opens_the_network() -> None:
    wrong = [
        f"{named(path)} imports {name}"
        for path in CODE
        for name in imports(path)
        if name.split(".")[0] in NETWORK and name not in LOCAL
    ]
    assert wrong == []


def test_files_are_short() -> None:
    long = {named(path): count for path in ALL if (count := len(path.read_text(encoding="utf-8").splitlines())) > LINES}
    assert long == {}


def test_functions_are_short() -> None:
    lengths = {
        f"{named(path)}: {node.name}": (node.end_lineno or 0) - node.body[0].lineno
        for path in CODE
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef)
    }
    long = {name: length for name, length in lengths.items() if length > FUNCTION_LINES}
    assert len(long) <= LONG_FUNCTIONS * len(lengths), long
    assert {name for name, length in long.items() if length > 2 * FUNCTION_LINES} == set()


def public(body: list[ast.stmt], above: str = "") -> Iterator[tuple[str, ast.FunctionDef | ast.ClassDef]]:
    for node in body:
        if isinstance(node, ast.FunctionDef | ast.ClassDef) and not node.name.startswith("_"):
            yield above + node.name, node


@pytest.mark.parametrize("path", [path for path in CODE if path.stat().st_size], ids=named)
def test_modules_and_their_public_names_say_what_they_are(path: Path) -> None:
    tree = ast.parse(path.read_text(encoding="utf-8"))
    assert ast.get_docstring(tree), "a module says what it is"
    silent = [name for name, node in public(tree.body) if not ast.get_docstring(node) and not plain(node)]
    assert silent == []


def plain(node: ast.FunctionDef | ast.ClassDef) -> bool:
    """Whether a name, its types and one or two lines say it all: `def lines(case) -> list[str]: return …`."""
    return (
        isinstance(node, ast.FunctionDef) and len(node.body) <= 2 and (node.end_lineno or 0) - node.body[0].lineno <= 4
    )


def test_the_tests_pass_nothing_over() -> None:
    skips = ("pytest." + "skip", "mark." + "skip", "x" + "fail", "importor" + "skip")
    wrong = [
        f"{named(path)}: {word}"
        for path in ALL
        for word in (*skips, "except Exc" + "eption:", "except" + ":\n")
        if word in path.read_text(encoding="utf-8")
    ]
    assert wrong == []


def test_no_word_of_the_network_at_run_time() -> None:
    """Even what we import must not have connected: an audit hook sees every socket a question opens."""
    import subprocess

    watch = (
        "import sys\n"
        "sys.addaudithook(lambda event, _: event.startswith('socket.') and print('opened', event))\n"
        "from assistant.command import main\n"
        "main(['ask', '--no-notebook', '--json', 'miter for a 5-in-12 rake return'])\n"
    )
    done = subprocess.run([sys.executable, "-c", watch], capture_output=True, text=True, check=True, cwd=ROOT)
    assert "opened" not in done.stdout
