"""The smaller commands: a new record, the numbers and the figures of a sheet."""
import csv
import json
import re
import statistics
import unittest

from program import RECORDS, RIGHT_HAND, InFolder, run, tool


class Begin(InFolder):
    def test_a_new_record_waits_to_be_filled_in_and_then_prints(self):
        self.expect(run("begin", self.folder / "new", "--date", "2026-05-14"), 0)
        self.assertEqual(self.files(), ["new/lesson.yaml", "new/shots.csv"])
        path = self.folder / "new" / "lesson.yaml"
        self.expect(run("check", path), 1, "'saw'", "'changed'", "'hand'")
        text = path.read_text(encoding="utf-8")
        self.assertIn("date: 2026-05-14\n", text)
        self.assertIn("# next: 2026-05-28\n", text)
        for empty, filled in (("  code: ", "  code: AD-01 "), ("  hand: ", "  hand: right "), ("saw: ", "saw: a "),
                              ("changed: ", "changed: b ")):
            text = text.replace(empty, filled, 1)
        path.write_text(text, encoding="utf-8")
        self.expect(run("check", path), 0)

    def test_a_record_that_is_there_stays_as_it_is(self):
        path = self.record()
        before = path.read_bytes()
        self.expect(run("begin", self.folder), 1, "is there already")
        self.assertEqual(path.read_bytes(), before)
        self.assertEqual(self.files(), ["lesson.yaml"])


class Numbers(InFolder):
    def rows(self, record, form):
        text = self.expect(run("numbers", record, "--as", form), 0).stdout.decode("utf-8")
        return json.loads(text)["numbers"] if form == "json" else list(csv.DictReader(text.splitlines()))

    def test_json_and_csv_hold_the_same_numbers(self):
        for record in RECORDS:
            with self.subTest(example=record.parent.name):
                from_json, from_csv = self.rows(record, "json"), self.rows(record, "csv")
                self.assertEqual([(r["what"], r.get("block", "")) for r in from_json],
                                 [(r["what"], r["block"]) for r in from_csv])
                for ours, cell in zip(from_json, from_csv):
                    if cell["value"]:
                        self.assertAlmostEqual(ours["value"], float(cell["value"]), places=5)

    def test_median_and_mean_are_those_that_python_finds_in_the_table(self):
        with open(RIGHT_HAND.parent / "shots.csv", encoding="utf-8") as table:
            faces = [float(shot["face"]) for shot in csv.DictReader(table)
                     if shot["block"] == "before" and not shot["set aside"]]
        told = {(r["what"], r["block"]): r for r in self.rows(RIGHT_HAND, "csv")}
        self.assertEqual(int(told["face: count", "before"]["value"]), len(faces))
        for what, value in (("median", statistics.median(faces)), ("mean", statistics.mean(faces)),
                            ("standard deviation", statistics.stdev(faces))):
            self.assertAlmostEqual(float(told[f"face: {what}", "before"]["value"]), value, places=5)

    def test_another_form_is_wrong_use(self):
        self.expect(run("numbers", RIGHT_HAND, "--as", "xml"), 2, "xml", "table")


class Figure(InFolder):
    def names(self):
        return self.expect(run("figure", RIGHT_HAND), 0).stdout.decode().split()

    def test_without_a_name_the_figures_are_listed_once_each(self):
        names = self.names()
        self.assertGreater(len(names), 5)
        self.assertEqual(len(names), len(set(names)))

    def test_every_figure_can_be_written_as_svg(self):
        for name in self.names():
            with self.subTest(figure=name):
                self.expect(run("figure", RIGHT_HAND, name, "-o", self.folder / f"{name}.svg"), 0)
                self.assertIn("<svg", (self.folder / f"{name}.svg").read_text(encoding="utf-8"))

    def test_a_figure_as_pdf_and_png_has_the_same_shape(self):
        name = self.names()[0]
        pdf, png = self.folder / "a.pdf", self.folder / "a.png"
        self.expect(run("figure", RIGHT_HAND, name, "-o", pdf), 0)
        self.expect(run("figure", RIGHT_HAND, name, "-o", png, "--dpi", 144), 0)
        tool("qpdf", "--check", pdf)
        points = list(map(float, re.search(r"Page size:\s+([\d.]+) x ([\d.]+)", tool("pdfinfo", pdf)).groups()))
        head = png.read_bytes()[:24]
        self.assertEqual(head[:8], b"\x89PNG\r\n\x1a\n")  # PNG specification, section 5.2
        pixels = [int.from_bytes(head[16:20], "big"), int.from_bytes(head[20:24], "big")]
        for size, count in zip(points, pixels):
            self.assertAlmostEqual(count, size * 2, delta=2)

    def test_an_unknown_figure_names_its_neighbour(self):
        name = self.names()[0]
        done = run("figure", RIGHT_HAND, name + "x", "-o", self.folder / "a.svg")
        self.expect(done, 2, f"did you mean '{name}'?")
        self.assertEqual(self.files(), [])

    def test_another_ending_is_wrong_use(self):
        self.expect(run("figure", RIGHT_HAND, self.names()[0], "-o", self.folder / "a.gif"), 2, ".svg, .png or .pdf")
        self.assertEqual(self.files(), [])


if __name__ == "__main__":
    unittest.main()
