"""Every example as other programs see it: poppler and qpdf read back what the coach wrote."""
import json
import re
import tempfile
import unittest
from pathlib import Path

from program import RECORDS, InFolder, bare_environment, run, tool

SENTENCE_KEYS = ("saw", "changed", "why", "comment")
ON_EVERY_SHEET = ("What is my one thing?", "How should I hold it?", "Why did the ball do that?",
                  "What do I do at home?", "What may happen, and when to stop?")


def plain(text):
    """Without differences of line, quote and hyphen that a page may make."""
    text = text.replace("\u2019", "'").replace("\u201c", '"').replace("\u201d", '"').replace("\u00ad", "")
    return re.sub(r"\s+", " ", text)


def written(record):
    """The sentences that the coach wrote in quotes, cut at full stops, so that a page may break between."""
    for key in SENTENCE_KEYS:
        found = re.search(rf'^{key}: "(.*)"$', record, re.M)
        for sentence in re.split(r"(?<=\.) ", found.group(1)) if found else ():
            yield sentence


class Examples(InFolder):
    @classmethod
    def setUpClass(cls):
        holder = tempfile.TemporaryDirectory(prefix="lessonleaf-")
        cls.addClassCleanup(holder.cleanup)
        cls.sheets = {record: Path(holder.name) / f"{record.parent.name}.pdf" for record in RECORDS}
        for record, target in cls.sheets.items():
            done = run("lesson", record, "-o", target)
            if done.returncode != 0:
                raise AssertionError(f"{record}: {done.stderr}")

    def each(self):
        """(name, record text, pdf) of every example."""
        self.assertGreaterEqual(len(self.sheets), 4)
        for record, target in self.sheets.items():
            with self.subTest(example=record.parent.name):
                yield record.parent.name, record.read_text(encoding="utf-8"), target

    def test_two_runs_give_the_same_bytes(self):
        for record, target in self.sheets.items():
            elsewhere = bare_environment(HOME="/nowhere", LC_ALL="tr_TR.UTF-8", TZ="Asia/Tokyo")
            again = self.expect(run("lesson", record, "-o", "-", folder=self.folder, env=elsewhere), 0)
            self.assertEqual(again.stdout, target.read_bytes())

    def test_qpdf_finds_nothing_wrong(self):
        for _, _, target in self.each():
            self.assertIn("No syntax or stream encoding errors", tool("qpdf", "--check", target))

    def test_every_font_is_an_embedded_subset_with_a_text_map(self):
        for _, _, target in self.each():
            fonts = tool("pdffonts", target).splitlines()[2:]
            self.assertGreater(len(fonts), 2)
            for line in fonts:
                self.assertRegex(line, r"\byes\s+yes\s+yes\s+\d+\s+\d+$")

    def test_every_sentence_of_the_coach_is_found(self):
        for name, record, target in self.each():
            page_text = plain(tool("pdftotext", "-raw", target, "-"))
            sentences = list(written(record))
            self.assertGreater(len(sentences), 2)
            for sentence in sentences:
                self.assertIn(plain(sentence), page_text, name)

    def test_every_sheet_asks_its_questions(self):
        for name, _, target in self.each():
            page_text = plain(tool("pdftotext", target, "-"))
            for question in ON_EVERY_SHEET:
                if question == "Why did the ball do that?" and name == "video":
                    continue
                self.assertIn(question, page_text, name)

    def test_a_left_hander_is_never_told_of_a_right_handed_hold(self):
        for name, record, target in self.each():
            page_text = plain(tool("pdftotext", target, "-"))
            left = "hand: left" in record
            if "age: junior" not in record:
                self.assertEqual("Your lead hand is the right one" in page_text, left, name)
                self.assertEqual("Your lead hand is the left one" in page_text, not left, name)
            self.assertEqual("Lead hand (your right)" in page_text, left, name)
            self.assertEqual("Lead hand (your left)" in page_text, not left, name)

    def test_pages_are_even_and_the_paper_is_iso_216(self):
        for _, _, target in self.each():
            facts = tool("pdfinfo", target)
            self.assertEqual(int(re.search(r"Pages:\s+(\d+)", facts).group(1)) % 2, 0)
            width, height = map(float, re.search(r"Page size:\s+([\d.]+) x ([\d.]+) pts", facts).groups())
            self.assertAlmostEqual(width * 25.4 / 72, 210, delta=0.1)  # ISO 216: A4 is 210 mm by 297 mm
            self.assertAlmostEqual(height * 25.4 / 72, 297, delta=0.1)

    def test_title_language_tags_and_date_are_those_of_the_record(self):
        for _, record, target in self.each():
            facts = tool("pdfinfo", "-isodates", target)
            name = re.search(r"name: (\w+)", record).group(1)
            self.assertIn(name, re.search(r"Title:\s+(.*)", facts).group(1))
            self.assertRegex(facts, r"Tagged:\s+yes")
            self.assertIn(re.search(r"^date: (\S+)", record, re.M).group(1), re.search(r"CreationDate:\s+(\S+)", facts).group(1))

    def test_the_document_says_its_language_and_every_figure_has_words(self):
        for _, _, target in self.each():
            whole = json.loads(tool("qpdf", "--json", target))
            objects = [o.get("value", o) if isinstance(o, dict) else o for o in self.objects(whole)]
            catalogues = [o for o in objects if isinstance(o, dict) and o.get("/Type") == "/Catalog"]
            self.assertEqual([c["/Lang"].removeprefix("u:") for c in catalogues], ["en-GB"])
            figures = [o for o in objects if isinstance(o, dict) and o.get("/S") == "/Figure"]
            self.assertGreater(len(figures), 0)
            for figure in figures:
                self.assertGreater(len(figure.get("/Alt", "")), 10)

    @staticmethod
    def objects(whole):
        """The objects of qpdf's JSON, version 1 or 2."""
        if "objects" in whole:
            return list(whole["objects"].values())
        return list(whole["qpdf"][1].values())


if __name__ == "__main__":
    unittest.main()
