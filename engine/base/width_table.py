#!/usr/bin/env python3
"""Writes width_table.hpp from Debian's unicode-data. usage: engine/base/width_table.py [--print]

Two columns: East Asian Width W or F (UAX #11), unassigned code points of such blocks included. None: general category Mn,
Me or Cf, but the soft hyphen, which a terminal shows; and the vowels and final consonants of Hangul, which join the
letter before them. One: the rest, ambiguous ones (A) too, since nobody here sets type in an East Asian legacy font.
"""
import pathlib
import sys

UNICODE = pathlib.Path("/usr/share/unicode")
SOFT_HYPHEN = 0xAD
HANGUL_THAT_JOIN = [*range(0x1160, 0x1200), *range(0xD7B0, 0xD800)]
LAST = 0x10FFFF


def rows(name):
    for line in (UNICODE / name).read_text("utf-8").splitlines():
        fields = [field.strip() for field in line.split("#")[0].split(";")]
        if len(fields) > 1:
            yield fields


def wide():
    for codes, width, *_ in rows("EastAsianWidth.txt"):
        first, _, last = codes.partition("..")
        if width in ("W", "F"):
            yield from range(int(first, 16), int(last or first, 16) + 1)


def joining():
    first = None
    for code, name, category, *_ in rows("UnicodeData.txt"):
        if name.endswith(", First>"):
            first = int(code, 16)
            continue
        if category in ("Mn", "Me", "Cf"):
            yield from range(first or int(code, 16), int(code, 16) + 1)
        first = None
    yield from HANGUL_THAT_JOIN


def ranges():
    columns = {code: 2 for code in wide()} | {code: 0 for code in joining() if code != SOFT_HYPHEN}
    found = []
    for code in sorted(columns):
        if found and found[-1][1] == code - 1 and found[-1][2] == columns[code]:
            found[-1][1] = code
        else:
            found.append([code, code, columns[code]])
    return found


def table():
    version = (UNICODE / "EastAsianWidth.txt").read_text("utf-8").split("\n", 1)[0].split("-")[1].removesuffix(".txt")
    entries = [f"{{0x{first:X}, 0x{last:X}, {columns}}}" for first, last, columns in ranges()]
    lines = [
        f"// Made by width_table.py from the files of Unicode {version}: not to be edited.",
        "#pragma once",
        "#include <array>",
        "#include <cstdint>",
        "",
        "namespace endbell::inline base {",
        "",
        "/// Code points that take another number of columns than one; ranges rise.",
        "struct WidthRange {",
        "    std::uint32_t first = 0;",
        "    std::uint32_t last = 0;",
        "    std::uint8_t columns = 0;",
        "};",
        "",
        "// clang-format off",
        f"inline constexpr std::array<WidthRange, {len(entries)}> width_table{{{{",
        *("    " + ", ".join(entries[i:i + 4]) + "," for i in range(0, len(entries), 4)),
        "}};",
        "// clang-format on",
        "",
        "}  // namespace endbell::inline base",
    ]
    return "\n".join(lines) + "\n"


if __name__ == "__main__":
    if sys.argv[1:] == ["--print"]:
        print(table(), end="")
    else:
        (pathlib.Path(__file__).parent / "width_table.hpp").write_text(table(), "utf-8")
