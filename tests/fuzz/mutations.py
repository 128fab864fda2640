"""Files as people and machines spoil them: by the byte, by the line, and by the number."""

from __future__ import annotations

import io
import re
import zipfile
from random import Random

NUMBER = re.compile(rb"(?<![\w.\"-])-?\d+(?:\.\d+)?(?:[eE][-+]?\d+)?(?![\w\"])")
PAIR = re.compile(rb"^([ \t]*[\w\"' .-]+?[ \t]*=[ \t]*)(.*)$")
WORDS = [
    *(b"0", b"-1", b"1e-300", b"1e300", b"-1e300", b"nan", b"inf", b"-inf", b"1e-9", b"1e9"),
    *(b"9" * 400, b"1_0", b"0x7f", b"true", b"false", b'""', b'"x"', b"[]", b"{}", b"[[]]"),
    *(b"[1, 2]", b"[nan, 0, 0]", b"1979-05-27", b"{a = {b = {c = 1}}}", b"[1, [2, [3, [4]]]]"),
    *(b'"\\u001b[31mred"', b'"\\u009b31m"', b'"\\u202eevil"', b'"\\u0000"', b'"' + b"y" * 5000),
    *(b'"=1+1"', b'"' + b"z" * 300 + b'"', b'"../../etc/passwd"', b'"a.b[0]"', b"''"),
]
BYTES = [b"\x00", b"\x1b[2J", b"\xff\xfe", b"\xef\xbb\xbf", b"\r", b"\n", b'"', b"[", b"]", b"="]
BYTES += [b"\xc2\x9b", b"\xe2\x80\xae", b"[[", b"{", b"}", b"#", b"\x85", b"'''", b'"""', b"."]


def spoiled(rng: Random, data: bytes) -> bytes:
    """The same file with something wrong, mostly little, in one to four places."""
    if data.startswith(b"PK") and rng.random() < 0.7:
        return inside(rng, data)
    for _ in range(rng.choice((1, 1, 1, 2, 4))):
        data = rng.choice((by_byte, by_line, by_word, by_word, by_size, by_size, by_size))(
            rng, data
        )
    return data


def within(rng: Random, data: bytes) -> bytes:
    """The same file with one to twelve numbers larger or smaller, mostly still such as it holds."""
    for _ in range(rng.choice((1, 1, 2, 3, 6, 12))):
        data = by_size(rng, data)
    return data


def inside(rng: Random, data: bytes) -> bytes:
    """An archive that is whole, with something wrong in what it holds."""
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(data)) as archive, zipfile.ZipFile(out, "w") as other:
        names = archive.namelist()
        chosen = rng.choice(names)
        for name in names:
            held = archive.read(name)
            if name != chosen:
                other.writestr(zipfile.ZipInfo(name), held)
            elif rng.random() < 0.8:  # else it is missing
                wrong = by_word if rng.random() < 0.3 else by_byte
                other.writestr(zipfile.ZipInfo(name), wrong(rng, held))
    return out.getvalue()


def by_byte(rng: Random, data: bytes) -> bytes:
    """Flipped, lost, doubled, foreign or missing bytes."""
    at = rng.randrange(len(data) + 1)
    end = min(len(data), at + rng.choice((1, 1, 2, 8, 64, 1024)))
    how = rng.randrange(6)
    if how == 0 and at < len(data):
        return data[:at] + bytes([data[at] ^ 1 << rng.randrange(8)]) + data[at + 1 :]
    if how == 1:
        return data[:at] + data[end:]
    if how == 2:
        return data[:at] + data[at:end] * rng.choice((2, 3, 50)) + data[end:]
    if how == 3:
        return data[:at]
    if how == 4:
        return data[:at] + rng.randbytes(rng.choice((1, 4, 32))) + data[end:]
    return data[:at] + rng.choice(BYTES) + data[at:]


def by_line(rng: Random, data: bytes) -> bytes:
    """Lines lost, doubled, swapped or moved."""
    lines = data.splitlines(keepends=True)
    if len(lines) < 2:
        return by_byte(rng, data)
    i, j = rng.randrange(len(lines)), rng.randrange(len(lines))
    how = rng.randrange(4)
    if how == 0:
        del lines[i]
    elif how == 1:
        lines.insert(j, lines[i])
    elif how == 2:
        lines[i], lines[j] = lines[j], lines[i]
    else:
        lines.insert(j, lines.pop(i))
    return b"".join(lines)


def by_word(rng: Random, data: bytes) -> bytes:
    """The value of one key, or one number, replaced by something that may not stand there."""
    lines = data.splitlines(keepends=True)
    pairs = [i for i, line in enumerate(lines) if PAIR.match(line.rstrip())]
    word = rng.choice(WORDS)
    if pairs and rng.random() < 0.7:
        i = rng.choice(pairs)
        found = PAIR.match(lines[i].rstrip())
        assert found is not None
        lines[i] = found.group(1) + word + b"\n"
        return b"".join(lines)
    return _number_replaced(rng, data, lambda _: word)


def by_size(rng: Random, data: bytes) -> bytes:
    """One number larger, smaller, the other way round, or at nothing."""

    def other(text: bytes) -> bytes:
        value = float(text)
        how = rng.randrange(8)
        if how == 0:
            value = -value
        elif how == 1:
            value = 0.0
        elif how == 2:
            value += rng.uniform(-100, 100)
        else:
            value *= 10 ** rng.gauss(0, rng.choice((0.1, 0.5, 2)))
        if b"." not in text and b"e" not in text.lower() and how < 3:
            return b"%d" % int(max(-1e18, min(1e18, value)))
        return b"%.9g" % value

    return _number_replaced(rng, data, other)


def _number_replaced(rng: Random, data: bytes, new) -> bytes:  # type: ignore[no-untyped-def]
    found = list(NUMBER.finditer(data))
    if not found:
        return by_byte(rng, data)
    one = rng.choice(found)
    return data[: one.start()] + new(one.group()) + data[one.end() :]
