"""The JSGF reader: what it takes, and what it says of a broken file."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from intents.grammars import FOLDER, load
from intents.jsgf import Either, GrammarError, Maybe, Ref, Repeat, Series, Tagged, Word, parse, read_grammar

HEAD = "#JSGF V1.0 UTF-8 en;\ngrammar try;\n"
TEXTS = [path.read_text(encoding="utf-8")[:1500] for path in sorted(FOLDER.glob("*.jsgf"))]
SPOILT = ("", "<", "|", ")", "{", "/", "import", "public", ";", '"', "é")


def body(text: str) -> object:
    return parse(f"{HEAD}public <a> = {text};").rules["a"].body


@pytest.mark.parametrize(
    ("text", "tree"),
    [
        ("miter", Word("miter")),
        ("miter cut", Series((Word("miter"), Word("cut")))),
        ("miter | mitre", Either((Word("miter"), Word("mitre")))),
        ("[for] cut", Series((Maybe(Word("for")), Word("cut")))),
        ("very* cut+", Series((Repeat(Word("very"), 0), Repeat(Word("cut"), 1)))),
        ("(a | b) c", Series((Either((Word("a"), Word("b"))), Word("c")))),
        ("square {fascia=SQUARE}", Tagged(Word("square"), "fascia=SQUARE")),
        ("/2.5/ a | /1/ b", Either((Word("a"), Word("b")))),
        ('"back up"', Word("back up")),
        ("a // a comment\n | /* another */ b", Either((Word("a"), Word("b")))),
        ("don't re-clad", Series((Word("don't"), Word("re-clad")))),
        ("{tag} ", None),
    ],
)
def test_a_body_is_read(text: str, tree: object) -> None:
    if tree is None:
        with pytest.raises(GrammarError):
            body(text)
    else:
        assert body(text) == tree


def test_a_tag_holds_to_the_part_before_it() -> None:
    tree = body("<pitch> {pitch} rake")
    assert isinstance(tree, Series)
    first, last = tree.parts
    assert isinstance(first, Tagged) and isinstance(first.part, Ref)
    assert (first.part.name, first.tag, last) == ("pitch", "pitch", Word("rake"))


def test_a_documentation_comment_names_topic_summary_and_examples() -> None:
    notes = "/** How far it is.\n *  @topic far\n *  @example how far\n *  @example far?\n */\n"
    rule = parse(HEAD + notes + "public <far> = far;").rules["far"]
    assert (rule.topic, rule.summary, rule.public) == ("far", "How far it is.", True)
    assert rule.examples == ("how far", "far?")


@pytest.mark.parametrize(
    ("text", "line", "reason"),
    [
        ("grammar try;\n", 1, "header"),
        (HEAD + "\npublic <a> = (b | c;\n", 4, "')'"),
        (HEAD + "<a> = b\n\n<c> = d;", 5, "'=' can't stand here"),
        (HEAD + "<a> = b | ;", 3, "empty"),
        (HEAD + "<a> = ;", 3, "empty"),
        (HEAD + "<a> = b;\n<a> = c;", 4, "twice"),
        (HEAD + "public a = b;", 3, "a rule"),
        (HEAD + "<a> = b > c;", 3, "'>'"),
        ("#JSGF V1.0;\nnonsense;\n", 2, "'grammar'"),
        (HEAD + "<a> = b", 3, "end of the file"),
        (HEAD + "import", 3, "end of the file"),
        ("#JSGF V1.0;\ngrammar", 2, "end of the file"),
    ],
)
def test_a_broken_file_gives_file_line_and_reason(text: str, line: int, reason: str) -> None:
    with pytest.raises(GrammarError) as failure:
        parse(text, "try.jsgf")
    assert str(failure.value).startswith(f"try.jsgf, line {line}: "), failure.value
    assert reason in failure.value.reason


def folder(tmp_path: Path, **files: str) -> Path:
    for name, text in files.items():
        (tmp_path / f"{name}.jsgf").write_text(f"#JSGF V1.0 UTF-8 en;\ngrammar {name};\n{text}", encoding="utf-8")
    return tmp_path


@pytest.mark.parametrize(
    ("files", "file", "line", "reason"),
    [
        ({"a": "import <nowhere.*>;\npublic <x> = y;"}, "a.jsgf", 3, "no grammar nowhere"),
        ({"a": "public <x> = <y>;"}, "a.jsgf", 3, "<y> is not defined"),
        ({"a": "public <x> = y [<x>];"}, "a.jsgf", 3, "leads back to itself"),
        ({"a": "public <x> = <y>;\n<y> = (<z> | b);\n<z> = [<x>] c;"}, "a.jsgf", 3, "leads back to itself"),
        ({"a": "import <b.*>;\npublic <x> = <y>;", "b": "public <y> = c <d>;"}, "b.jsgf", 3, "<d> is not defined"),
        ({"a": "import <b.*>;\nimport <c.*>;\npublic <x> = <y>;", "b": "public <y> = b;", "c": "public <y> = c;"},
         "a.jsgf", 5, "defined in b and c"),
    ],
)  # fmt: skip
def test_a_broken_folder_gives_file_line_and_reason(
    tmp_path: Path, files: dict[str, str], file: str, line: int, reason: str
) -> None:
    with pytest.raises(GrammarError) as failure:
        load(folder(tmp_path, **files))
    assert (failure.value.file, failure.value.line) == (file, line)
    assert reason in failure.value.reason


def test_imports_reach_the_rules_of_another_file(tmp_path: Path) -> None:
    book = load(folder(tmp_path, a="import <b.*>;\npublic <x> = <y> | <b.y>;", b="public <y> = c;"))
    grammar = book.grammars["a"]
    body = grammar.rules["x"].body
    assert isinstance(body, Either)
    assert [book.find(grammar, part)[0].name for part in body.parts if isinstance(part, Ref)] == ["b", "b"]


def test_a_file_is_named_as_its_grammar_and_is_text(tmp_path: Path) -> None:
    (tmp_path / "a.jsgf").write_text("#JSGF V1.0;\ngrammar b;\n<x> = y;")
    with pytest.raises(GrammarError, match=r"a\.jsgf, line 2: the grammar must be named a"):
        load(tmp_path)
    (tmp_path / "a.jsgf").write_bytes(b"\xff\xfe\x00")
    with pytest.raises(GrammarError, match="not UTF-8"):
        read_grammar(tmp_path / "a.jsgf")


@settings(max_examples=300, deadline=None, derandomize=True, database=None)
@given(st.data())
def test_a_file_cut_or_spoilt_anywhere_is_read_or_named(data: st.DataObject) -> None:
    text = data.draw(st.sampled_from(TEXTS))
    at = data.draw(st.integers(0, len(text)))
    rest = text[at + data.draw(st.integers(1, 9)) :] if data.draw(st.booleans()) else ""
    broken = text[:at] + data.draw(st.sampled_from(SPOILT)) + rest
    try:
        parse(broken, "try.jsgf")
    except GrammarError as failure:
        assert 1 <= failure.line <= broken.count("\n") + 1
        assert failure.reason
