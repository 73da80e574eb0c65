"""The rules of the house, read from the files themselves.

CMakeLists.txt is the single source of who may include whom: a room may include what it links,
directly or through a room that it links.
"""
import re
import unittest
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
SOURCES = sorted(p for p in (ROOT / "src").rglob("*") if p.suffix in (".cpp", ".hpp"))
TESTS = sorted(p for p in (ROOT / "tests").rglob("*") if p.suffix in (".cpp", ".hpp"))
MOST_LINES = 400

# Which rooms may include a library's headers; every other room must go through them.
LIBRARIES = {
    r"yaml-cpp/": {"yaml"},
    r"pango/|fontconfig/": {"text"},
    r"cairo\.h": {"output", "text"},  # text hands shaped glyphs over as Cairo's plain values
    r"cairo-": {"output"},
    r"librsvg/": {"output"},
    r"turbojpeg|png\.h": {"photo"},
    r"qrencode": {"figure"},
    r"qpdf/|zlib\.h|libdeflate|xxhash\.h": {"output"},
    r"unicode/": {"words"},
    r"CLI/": {"cli"},
    r"nlohmann/": {"cli"},
}

# Words that a sheet never says: each claims more than a lesson's shots can show.
NEVER = re.compile(r"\b(improv(?:ed?|es|ing|ements?)|proven|fixed|perfect(?:ly)?|significant(?:ly)?)\b", re.I)


def room_table(text):
    """{room: rooms it links}, from the room(...) lines and the one library written out."""
    table = {}
    for name, rest in re.findall(r"^room\((\w+)([^)]*)\)", text, re.M):
        rooms = re.search(r"\bROOMS\b(.*?)(?:\bLIBRARIES\b|$)", rest, re.S)
        table[name] = set(rooms.group(1).split()) if rooms else set()
    for name, rest in re.findall(r"^target_link_libraries\(room_(\w+)([^)]*)\)", text, re.M):
        table[name] = set(re.findall(r"\broom_(\w+)", rest))
    return table


def reach(table, room):
    """Every room that `room` links, near or far."""
    seen, waiting = set(), [room]
    while waiting:
        for other in table[waiting.pop()]:
            if other not in seen:
                seen.add(other)
                waiting.append(other)
    return seen


def room_of(path):
    return path.relative_to(ROOT / "src").parts[0]


def lines_of(path):
    return path.read_text(encoding="utf-8").splitlines()


def includes(path, form):
    for number, line in enumerate(lines_of(path), start=1):
        found = re.match(form, line)
        if found:
            yield number, found.group(1)


def wrong_arrows(table, sources):
    """'file:line: room may not include other', for every include that the table does not allow."""
    wrong = []
    for path in sources:
        room = room_of(path)
        allowed = reach(table, room) | {room} if room in table else {room}
        for number, other in includes(path, r'\s*#\s*include\s+"(\w+)/'):
            if other not in allowed:
                wrong.append(f"{path.relative_to(ROOT)}:{number}: '{room}' may not include '{other}'")
    return wrong


class Rooms(unittest.TestCase):
    table = room_table((ROOT / "CMakeLists.txt").read_text(encoding="utf-8"))

    def test_every_folder_of_src_is_a_room_of_the_table(self):
        self.assertEqual({room_of(p) for p in SOURCES} - set(self.table), set())

    def test_a_room_includes_only_what_it_links(self):
        self.assertGreater(len(SOURCES), 100)
        self.assertEqual(wrong_arrows(self.table, SOURCES), [])

    def test_no_room_links_itself_through_others(self):
        self.assertEqual([room for room in self.table if room in reach(self.table, room)], [])

    def test_a_wrong_arrow_would_be_found(self):
        emptied = {room: set() for room in self.table}
        self.assertGreater(len(wrong_arrows(emptied, SOURCES)), 50)

    def test_each_library_is_used_by_its_one_room(self):
        wrong = []
        for path in SOURCES:
            for number, header in includes(path, r"\s*#\s*include\s+<([^>]+)>"):
                for library, rooms in LIBRARIES.items():
                    if re.match(library, header) and room_of(path) not in rooms:
                        wrong.append(f"{path.relative_to(ROOT)}:{number}: <{header}>")
        self.assertEqual(wrong, [])


    def test_only_the_output_makes_surfaces(self):
        makes = re.compile(r"cairo_\w*surface_create")
        rooms = {room_of(p) for p in SOURCES if makes.search(p.read_text(encoding="utf-8"))}
        self.assertEqual(rooms, {"output"})


class Safe(unittest.TestCase):
    def test_the_program_starts_no_other_and_speaks_to_no_network(self):
        calls = re.compile(r"\b(?:system|popen|execv\w*|execl\w*|posix_spawn\w*|fork|socket|connect|getaddrinfo)\s*\(")
        for path in SOURCES:
            for number, line in enumerate(lines_of(path), start=1):
                self.assertIsNone(calls.search(line.split("//")[0]), f"{path}:{number}: {line.strip()}")


class Lengths(unittest.TestCase):
    def test_no_file_is_longer_than_the_rule(self):
        longest = sorted(((len(lines_of(p)), str(p.relative_to(ROOT))) for p in SOURCES + TESTS), reverse=True)
        print("\nThe ten longest files:")
        for count, name in longest[:10]:
            print(f"{count:5}  {name}")
        self.assertEqual([row for row in longest if row[0] > MOST_LINES], [])


class Wording(unittest.TestCase):
    def test_no_template_says_more_than_a_lesson_can_show(self):
        said = []
        for path in sorted(p for p in (ROOT / "templates").rglob("*") if p.is_file()):
            for number, line in enumerate(lines_of(path), start=1):
                if not line.lstrip().startswith("#") and NEVER.search(line):
                    said.append(f"{path.relative_to(ROOT)}:{number}: {line.strip()}")
        self.assertEqual(said, [])

    def test_no_sentence_in_the_sources_says_it_either(self):
        said = []
        for path in SOURCES:
            for number, line in enumerate(lines_of(path), start=1):
                for text in re.findall(r'"((?:[^"\\]|\\.)*)"', line):
                    if " " in text and NEVER.search(text):
                        said.append(f"{path.relative_to(ROOT)}:{number}: {text}")
        self.assertEqual(said, [])



class Sentences(unittest.TestCase):
    """A sentence that nothing says is a burden to every translator."""

    def test_every_sentence_is_said_somewhere(self):
        source = "".join(p.read_text(encoding="utf-8") for p in sorted((ROOT / "src").rglob("*.?pp")))
        written = set(re.findall(r'"([a-z0-9.\-]+)"', source))
        heads = tuple(w for w in written if w[-1] in ".-")  # a key is made from it and a word
        tails = tuple(w for w in written if w[0] in ".-")

        def said(key):
            parts = key.split(".")
            if key in written or key.startswith(heads):
                return True
            if any(".".join(parts[:n]) in written for n in range(2, len(parts))):
                return True  # the rest of the key is chosen when the program runs
            return any(key.endswith(t) and (key[: -len(t)] in written or key[: -len(t)].startswith(heads)) for t in tails)

        keys = [
            m[1]
            for file in sorted((ROOT / "templates/words/en-GB").glob("*.txt"))
            for m in re.finditer(r"^([a-z0-9][a-z0-9.\-]*) = ", file.read_text(encoding="utf-8"), re.M)
        ]
        self.assertGreater(len(keys), 500)
        self.assertEqual([k for k in keys if not said(k)], [])

if __name__ == "__main__":
    unittest.main()
