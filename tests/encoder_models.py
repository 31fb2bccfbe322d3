"""The networks that tests/train_encoder.py learns: the teacher, and the encoder as intents/transformer.py works it."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any, NamedTuple

import torch
from torch import Tensor, nn
from torch.nn import functional

from intents.transformer import HEAD, MOST

WIDE, NARROW, TALL, WIDE_LAYERS, LAYERS = 384, 192, 512, 3, 2  # states of the teacher, of the encoder, its inner ones, layers
TABLES = (("unit", 16), ("size", 24), ("rank", 8), ("fine", 20))
MATRICES = ("qkv", "out", "up", "down")


class Example(NamedTuple):
    """A sentence: rows of the embedding, what each quantity is like, its topic; of each quantity its roles and the right one."""

    rows: list[int]
    feats: list[tuple[int, int, int, int]]
    topic: int
    roles: list[tuple[int, list[tuple[int, int]], int]]


class World(NamedTuple):
    """What the numbers of an example stand for."""

    pieces: list[str]
    kinds: dict[str, int]
    topics: list[str]
    roles: list[str]


class Common(nn.Module):
    """What teacher and encoder have in common: what becomes of the signs, and what is told from the states."""

    def __init__(self, world: World, width: int):
        super().__init__()
        self.feats = nn.ModuleList(nn.Embedding(size, width) for _, size in TABLES)
        for table in self.feats:
            nn.init.normal_(table.weight, 0, 0.01)
        self.role = nn.Embedding(len(world.roles), width + 1)
        nn.init.normal_(self.role.weight, 0, 0.02)
        self.topic = nn.Linear(width, len(world.topics))

    def told(self, embedded: Tensor, feats: Tensor) -> Tensor:
        quantity = (feats.sum(-1) > 0).unsqueeze(-1).float()
        return embedded + quantity * sum(table(feats[..., n]) for n, table in enumerate(self.feats))

    def topics(self, states: Tensor, mask: Tensor) -> Tensor:
        seen = mask.unsqueeze(-1).float()
        return self.topic((states * seen).sum(1) / seen.sum(1))  # type: ignore[no-any-return]

    def roles(self, states: Tensor, batch: list[Example]) -> tuple[Tensor, Tensor] | None:
        """What speaks for each role of every quantity of a batch, and which is right."""
        told = [(n, *role) for n, each in enumerate(batch) for role in each.roles]
        if not told:
            return None
        most = max(len(every) for _, _, every, _ in told)
        index = torch.zeros(len(told), most, 2, dtype=torch.long)
        outside = torch.full((len(told), most), -1e4)
        for n, (_, _, every, _) in enumerate(told):
            index[n, : len(every)], outside[n, : len(every)] = torch.tensor(every), 0
        here = states[[n for n, _, _, _ in told], [at for _, at, _, _ in told]]
        here = torch.cat([here, torch.ones(len(here), 1)], 1).unsqueeze(1)
        return (self.role(index).sum(2) * here).sum(-1) + outside, torch.tensor([right for _, _, _, right in told])


class Teacher(Common):
    """The first layers of the general model."""

    def __init__(self, world: World, place: Path, rows: list[int]):
        super().__init__(world, WIDE)
        from transformers import AutoModel

        self.body = AutoModel.from_pretrained(place, hidden_act="gelu_pytorch_tanh")
        self.body.encoder.layer = self.body.encoder.layer[:WIDE_LAYERS]
        embed = self.body.embeddings.word_embeddings.weight.detach()[rows]
        self.body.embeddings.word_embeddings = nn.Embedding.from_pretrained(embed, freeze=False)

    def forward(self, rows: Tensor, feats: Tensor, mask: Tensor) -> Tensor:
        embedded = self.told(self.body.embeddings.word_embeddings(rows), feats)
        return self.body(inputs_embeds=embedded, attention_mask=mask).last_hidden_state  # type: ignore[no-any-return]


class Layer(nn.Module):
    """A layer of the encoder, as intents/transformer.py works it."""

    def __init__(self) -> None:
        super().__init__()
        self.qkv, self.out = nn.Linear(NARROW, 3 * NARROW), nn.Linear(NARROW, NARROW)
        self.up, self.down = nn.Linear(NARROW, TALL), nn.Linear(TALL, NARROW)
        self.norm1, self.norm2 = (nn.LayerNorm(NARROW, eps=1e-12) for _ in range(2))

    def forward(self, x: Tensor, outside: Tensor) -> Tensor:
        many, tall, _ = x.shape
        q, k, v = self.qkv(x).view(many, tall, 3, NARROW // HEAD, HEAD).permute(2, 0, 3, 1, 4)
        near = (q @ k.transpose(-1, -2) / HEAD**0.5 + outside).softmax(-1)
        x = self.norm1(x + self.out((near @ v).transpose(1, 2).reshape(many, tall, NARROW)))
        return self.norm2(x + self.down(functional.gelu(self.up(x), approximate="tanh")))  # type: ignore[no-any-return]


class Narrow(Common):
    """The encoder."""

    def __init__(self, world: World):
        super().__init__(world, NARROW)
        self.embed, self.place = nn.Embedding(len(world.pieces), NARROW), nn.Parameter(torch.zeros(MOST, NARROW))
        self.norm, self.layers = nn.LayerNorm(NARROW, eps=1e-12), nn.ModuleList(Layer() for _ in range(LAYERS))
        self.widened = nn.Linear(NARROW, WIDE)  # for learning alone

    def begin(self, teacher: Teacher) -> None:
        """Start with the teacher's embedding, along its widest directions."""
        body = teacher.body.embeddings
        embed = body.word_embeddings.weight.detach()
        turn = torch.linalg.svd(embed, full_matrices=False)[2][:NARROW].T * (WIDE / NARROW) ** 0.5
        self.embed.weight.data = embed @ turn
        place = body.position_embeddings.weight.detach()[:MOST] + body.token_type_embeddings.weight.detach()[0]
        self.place.data = place @ turn
        for mine, other in zip(self.feats, teacher.feats, strict=True):
            mine.weight.data = other.weight.detach() @ turn

    def take_up(self, world: World, arrays: dict[str, Any], about: dict[str, Any]) -> None:
        """Start where the kept encoder is; what it does not know of `world` starts from nothing."""
        for name, tensor in self.kept():
            found = torch.tensor(arrays[name] * arrays.get(f"{name}_scale", 1.0), dtype=torch.float32)
            if name in ("topic", "topic_bias", "role"):
                mine, theirs = (world.roles, about["roles"]) if name == "role" else (world.topics, about["topics"])
                rows = [n for n, each in enumerate(mine) if each in theirs]
                found = found.T if name == "topic" else found
                tensor.data[rows] = found[[theirs.index(mine[n]) for n in rows]]
            else:
                tensor.data = found.T if name.rpartition(".")[2] in MATRICES else found

    def kept(self) -> Iterator[tuple[str, Tensor]]:
        """Each of the numbers that are kept, by its name in the file; matrices lie the other way there."""
        yield from (("embed", self.embed.weight), ("role", self.role.weight), ("place", self.place))
        yield from (("topic", self.topic.weight), ("topic_bias", self.topic.bias))
        yield from ((name, table.weight) for (name, _), table in zip(TABLES, self.feats, strict=True))
        norms = [("norm", self.norm)]
        for n, layer in enumerate(self.layers):
            norms += [(f"{n}.{name}", getattr(layer, name)) for name in ("norm1", "norm2")]
            for name in MATRICES:
                yield f"{n}.{name}", getattr(layer, name).weight
                yield f"{n}.{name}_bias", getattr(layer, name).bias
        for name, norm in norms:
            yield from ((name, norm.weight), (f"{name}_bias", norm.bias))

    def forward(self, rows: Tensor, feats: Tensor, mask: Tensor) -> Tensor:
        x = self.norm(self.told(self.embed(rows), feats) + self.place[: rows.shape[1]])
        outside = (1 - mask.float())[:, None, None, :] * -1e4
        for layer in self.layers:
            x = layer(x, outside)
        return x  # type: ignore[no-any-return]
