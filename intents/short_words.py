"""Short words of notes, whole: btm, ang, flr, lths, dwnpipe; and signs that stand for words: Ø, ∠, an arrow.

Only those that are one word wherever they stand; `texted.py` has the rest, and spells them all out.
"""

from __future__ import annotations

from intents.tokens import Token

WORDS = {
    short: whole
    for whole, shorts in {
        "degrees": "dg dgs degs", "marks": "mks mrks", "joist": "jst", "blocking": "blkg blkng", "kerf": "krf", "rise": "rse",
        "casing": "csg csng", "degrees c": "degc", "degrees f": "degf",
        "overhang": "ohang o'hang o'hng", "opening": "opg", "openings": "opgs", "pickets": "pckts", "picket": "pckt",
        "peak": "pk", "crown": "coving covings", "windows": "wins windws wndows", "heads": "hds", "head": "hd",
        "clear": "clr", "equal": "eq", "house": "hse", "existing": "exist", "screws": "scws", "should": "shd shoulda",
        "net": "nett", "would": "woulda", "could": "coulda",
        "balusters": "bals balstrs blstrs balsters", "girth": "girht strtchout", "sticks": "stix", "fascia": "fsca",
        "angle": "ang angl ∠", "diameter": "ø diam diamtr", "circumference": "circumf circ circum circumfrence",
        "perimeter": "perim perimtr", "downpipe": "dwnpipe dwnpp", "bottom": "botm bttm bot", "vertical": "vert",
        "batten": "btn battn",
        "battens": "btns battns", "weatherboard": "wbd wboard", "weatherboards": "wbds wboards", "lengths": "lths lgts lnths",
        "floor": "flr floot", "rafter": "raft rftr", "height": "hieght heigth", "spring": "spr sprng", "step": "stp",
        "cover": "cvr covr", "covers": "cvrs", "courses": "cse cses crss", "grain": "grn", "western red cedar": "wrc",
        "footers": "ftrs", "footer": "ftr", "much": "mch", "out of": "outta outa", "stagger": "stggr", "swing": "swng",
        "possible": "poss", "circuit": "ckt cct", "receptacles": "recepts recps", "panels": "pans",
        "inside": "insd", "outside": "otsd outsd", "horizontal": "horiz", "minimum": "minm", "fastener": "fstnr fastnr",
        "fasteners": "fstnrs fastnrs", "straps": "strps", "temperature": "temp", "gauge": "gge",
        "hypotenuse": "hypot", "ridge": "rdg rdge", "ladder": "laddr", "bearing": "brg", "gutter": "guttr gttr",
        "shingles": "shngls", "quarter": "qtr", "nothing": "nowt", "weatherboarding": "wbding", "centres": "centrs cntres",
        "joists": "jsts", "ceiling": "clng clg", "compound": "cmpd cmpnd", "miter": "mtre mtr",
        "flashing": "flshg flashg flsh", "plate": "plt", "wall": "wl", "length": "lth", "walls": "wls",
        "foundation": "fdn fndn", "divided": "div", "skirting": "skrtg skirtg", "aluminum": "alum", "rebate": "rbt",
        "brace": "brc", "pieces": "pces", "piece": "pce", "frost": "frst", "gazebo": "gzbo",
        "humidity": "humid", "moisture": "moist", "membrane": "membr", "strip": "strp", "decimal": "dec decml",
        "change": "chg", "slab": "slb", "exposure": "xpo xpsr xpos exposr", "jacks": "jks jcks",
        "sill": "sil", "balance": "bal balnc", "eaves": "eav eavs", "window": "windw wndow windo",
        "baluster": "balstr", "difference": "dif diffce", "top": "tp", "door": "ohd", "plasterboard": "pb pbd plstrbd plasterbd",
        "litres": "ltr ltrs", "packs": "pkts pcks", "pack": "pkt", "required": "reqd req'd",
    }.items()
    for short in shorts.split()
}  # fmt: skip
_TURNED, _ENDS = frozenset("f c sf sqft m2 sqm".split()), frozenset("= ? . , please pls".split())
_ARROWS = frozenset("→ ⇒ ➔ ➜".split())
_UNITS = frozenset(
    "mm cm m in ft inches feet inch foot metres meters m2 sqm sf sqft deg degrees kg lb squares litres gal f c".split()
)


def signs_spelled(tokens: list[Token], said: set[str]) -> list[Token]:
    """The tokens with their arrows as the words they stand for: 7'9 3/4 -> mm is in mm, 7% → 11% from one to the other."""
    if said.isdisjoint(_ARROWS) and ">" not in said:
        return tokens
    tokens, found = [*tokens], list[Token]()
    for at, token in enumerate(tokens):
        drawn = token.text == ">" and found and found[-1].text in ("-", "=") and found[-1].end == token.start
        alone = token.text == ">" and not drawn and {each.text for each in tokens[at + 1 : at + 2]} <= _UNITS  # 83 m2 > sf
        if not (drawn or alone) and token.text not in _ARROWS:
            found.append(token)
            continue
        start = found.pop().start if drawn else token.start
        after = tokens[at + 1].text if at + 1 < len(tokens) else ""
        before = found[-1].text if found else ""
        told = after[:1].isdecimal() and (before[-1:].isdecimal() or before in ("%", "°"))  # 7% → 11%
        last = [each.text for each in tokens[at + 2 : at + 3]]
        unit = after in _UNITS and (not last or last[0] in _ENDS)
        if unit and after == "in":
            tokens[at + 1] = Token("inches", tokens[at + 1].start, tokens[at + 1].end)  # 1830mm -> in
        across = token.text == "→" and ("↑" in said or "↓" in said) and before[-1:].isdecimal()  # 2100↑ 1650→
        found.append(Token("across" if across else "to" if told or after in _TURNED else "in" if unit else ",", start, token.end))
    return found
