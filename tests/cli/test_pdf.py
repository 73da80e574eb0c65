"""The PDF as a good citizen, the text twin, photographs and codes, as other programs see them."""
import re
import shutil
import struct
import subprocess
import unittest
from pathlib import Path

from pdf_file import PdfFile
from program import RECORDS, RIGHT_HAND, SMALL_RECORD, InFolder, run, tool

HOLD = Path(__file__).with_name("hold.jpg")


def with_exif(jpeg, orientation):
    """The JPEG with device, orientation and place written into it as a telephone does (CIPA DC-008)."""
    entries = (struct.pack("<HHII", 0x010F, 2, 12, 50) + struct.pack("<HHIHH", 0x0112, 3, 1, orientation, 0)
               + struct.pack("<HHII", 0x8825, 4, 1, 62))
    place = (struct.pack("<H", 2) + struct.pack("<HHI4s", 1, 2, 2, b"N\0\0\0") + struct.pack("<HHII", 2, 5, 3, 92)
             + struct.pack("<I", 0) + struct.pack("<6I", 51, 1, 30, 1, 987654, 1000))
    body = b"Exif\0\0II*\0" + struct.pack("<IH", 8, 3) + entries + struct.pack("<I", 0) + b"NosyCamera7\0" + place
    return jpeg[:2] + b"\xff\xe1" + struct.pack(">H", len(body) + 2) + body + jpeg[2:]


class Structure(InFolder):
    def test_every_example_keeps_to_what_a_machine_can_check_of_pdf_ua(self):
        for record in RECORDS:
            with self.subTest(example=record.parent.name):
                self.expect(run("lesson", record, "-o", "sheet.pdf", folder=self.folder), 0)
                self.assertEqual(PdfFile(self.folder / "sheet.pdf").faults(), [])

    def test_the_check_itself_finds_faults(self):
        self.expect(run("lesson", RIGHT_HAND, "-o", "sheet.pdf", folder=self.folder), 0)
        sheet = PdfFile(self.folder / "sheet.pdf")
        for element, _ in sheet.elements():
            if element["/S"] == "/Figure":
                del element["/A"]
            if element["/S"] == "/H1":
                element["/S"] = "/H3"
        faults = " ".join(sheet.faults())
        self.assertIn("has no box", faults)
        self.assertIn("H3 after H0", faults)

    def test_mupdf_and_ghostscript_read_every_example_without_a_word(self):
        for record in RECORDS:
            self.expect(run("lesson", record, "-o", "sheet.pdf", folder=self.folder), 0)
            sheet = self.folder / "sheet.pdf"
            with self.subTest(example=record.parent.name):
                if shutil.which("mutool"):
                    done = subprocess.run(["mutool", "draw", "-q", "-r", "20", "-o", "/dev/null", "-F", "pgm", sheet],
                                          capture_output=True)
                    said = done.stderr.replace(b"warning: ICC support is not available\n", b"")  # of its own build
                    self.assertEqual((done.returncode, said), (0, b""))
                if shutil.which("gs"):
                    done = subprocess.run(["gs", "-q", "-dNOPAUSE", "-dBATCH", "-dSAFER", "-sDEVICE=nullpage", sheet],
                                          capture_output=True)
                    self.assertEqual((done.returncode, done.stdout, done.stderr), (0, b"", b""))


class Sealed(InFolder):
    def test_a_text_is_neither_locked_nor_does_it_carry_files(self):
        self.record()
        word = self.folder / "word"
        word.write_text("kettle window paper boat\n", encoding="utf-8")
        for target, more in (("pw.txt", ()), ("PW.TXT", ()), ("pw.pdf", ("--as", "text")), ("-", ("--as", "text")), ("out/", ("--as", "text"))):
            for option, said in ((("--password-file", word), "a text cannot be locked with a password"),
                                 (("--attach",), "a text cannot be given files to carry")):
                with self.subTest(target=target, option=option[0]):
                    done = run("lesson", "lesson.yaml", "-o", target, *more, *option, folder=self.folder)
                    self.expect(done, 2, said, f"hint: write a PDF (-o sheet.pdf), or leave {option[0]} out")
                    self.assertEqual((done.stdout, self.files()), (b"", ["lesson.yaml", "word"]))
        (self.folder / "there.txt").mkdir()
        self.expect(run("lesson", "lesson.yaml", "-o", "there.txt", "--password-file", word, folder=self.folder), 0)
        self.assertEqual([path.suffix for path in (self.folder / "there.txt").iterdir()], [".pdf"])

    def test_the_password_file_is_not_written_over(self):
        self.record()
        word = self.folder / "word.pdf"
        word.write_text("kettle window paper boat\n", encoding="utf-8")
        self.expect(run("lesson", "lesson.yaml", "-o", word, "--password-file", word, folder=self.folder), 3, "it is an input of this run")
        self.assertEqual(word.read_text(encoding="utf-8"), "kettle window paper boat\n")

    def test_a_password_opens_the_sheet_and_nothing_else_does(self):
        (self.folder / "password").write_text("four quiet words here\n", encoding="utf-8")
        self.expect(run("lesson", RIGHT_HAND, "-o", "sheet.pdf", "--password-file", "password", folder=self.folder), 0)
        sheet = self.folder / "sheet.pdf"
        self.assertIn("AESv3", tool("qpdf", "--show-encryption", "--password=four quiet words here", sheet))
        self.assertIn("Lay and close", tool("pdftotext", "-upw", "four quiet words here", sheet, "-"))
        self.assertNotEqual(subprocess.run(["pdftotext", sheet, "-"], capture_output=True).returncode, 0)
        self.assertNotIn(b"Ruth", sheet.read_bytes())

    def test_a_password_that_is_no_password_is_refused_before_anything_is_drawn(self):
        (self.folder / "password").write_text("short\n", encoding="utf-8")
        for name, said in (("password", "8 to 127"), ("nowhere", "cannot be read")):
            self.expect(run("lesson", RIGHT_HAND, "-o", "sheet.pdf", "--password-file", name, folder=self.folder), 2, said)
        self.assertEqual(self.files(), ["password"])

    def test_a_sheet_with_its_sources_can_be_made_again_from_itself(self):
        self.expect(run("lesson", RIGHT_HAND, "-o", "sheet.pdf", "--attach", folder=self.folder), 0)
        again = self.folder / "again"
        again.mkdir()
        tool("pdfdetach", "-saveall", "-o", again, self.folder / "sheet.pdf")
        self.assertEqual(sorted(p.name for p in again.iterdir()), ["lesson.yaml", "shots.csv"])
        self.expect(run("lesson", again / "lesson.yaml", "-o", "second.pdf", "--attach", folder=self.folder), 0)
        self.assertEqual((self.folder / "sheet.pdf").read_bytes(), (self.folder / "second.pdf").read_bytes())


class Twin(InFolder):
    def test_the_text_says_what_the_pages_say_within_72_characters(self):
        for record in RECORDS:
            with self.subTest(example=record.parent.name):
                self.expect(run("lesson", record, "-o", "sheet.txt", folder=self.folder), 0)
                text = (self.folder / "sheet.txt").read_text(encoding="utf-8")
                long = [line for line in text.splitlines() if len(line) > 72 and " " in line.strip()]
                self.assertEqual(long, [])
                flat = re.sub(r"\s+", " ", text).replace("\u2019", "'")
                for key in ("saw", "changed"):
                    words = re.search(rf'^{key}: "(.*)"$', record.read_text(encoding="utf-8"), re.M).group(1)
                    self.assertIn(words.replace("\u2019", "'"), flat)
                self.assertIn("What may happen, and when to stop?\n=====", text)
                self.assertIn("[Picture: ", text)
                self.assertNotIn("page 1 of", text)  # furniture

    def test_as_text_names_the_files_of_a_folder_so(self):
        self.record()
        self.expect(run("lesson", "lesson.yaml", "-o", "out/", "--as", "text", folder=self.folder), 0)
        self.assertEqual(self.files(), ["lesson.yaml", "out/AD-01-2026-05-14.txt"])


class Pictures(InFolder):
    def sheet(self, more, name="sheet.pdf"):
        self.record(text=SMALL_RECORD + more)
        return run("lesson", "lesson.yaml", "-o", name, folder=self.folder)

    def test_a_photograph_bears_no_place_and_no_device_and_stands_upright(self):
        raw = with_exif(HOLD.read_bytes(), 6)
        (self.folder / "before.jpg").write_bytes(raw)
        self.assertIn(b"NosyCamera7", raw)
        self.expect(self.sheet("photographs: {before: before.jpg, caption: Look at the pad.}\n"), 0)
        images = tool("pdfimages", "-list", self.folder / "sheet.pdf")
        self.assertRegex(images, r"image +640 +480 .* jpeg ")  # turned: 480 by 640 as stored
        tool("pdfimages", "-all", self.folder / "sheet.pdf", self.folder / "back")
        for path in [self.folder / "sheet.pdf", *self.folder.glob("back*")]:
            self.assertNotIn(b"NosyCamera7", path.read_bytes())
        plain = subprocess.run(["qpdf", "--qdf", "--object-streams=disable", self.folder / "sheet.pdf", "-"],
                               capture_output=True, check=True).stdout
        for nosy in (b"NosyCamera7", b"Exif", struct.pack("<II", 987654, 1000)):
            self.assertNotIn(nosy, plain)
        self.assertIn("Look at the pad.", tool("pdftotext", self.folder / "sheet.pdf", "-"))
        self.assertEqual(PdfFile(self.folder / "sheet.pdf").faults(), [])

    def test_what_cannot_be_printed_is_told_at_its_place(self):
        (self.folder / "half.jpg").write_bytes(HOLD.read_bytes()[:900])
        (self.folder / "note.jpg").write_text("not a picture")
        for name, said in (("half.jpg", "broken or cut short"), ("note.jpg", "neither JPEG nor PNG"),
                           ("none.jpg", "cannot be read"), ("../up.jpg", "must lie beside"), ("/etc/up.jpg", "must lie beside")):
            self.expect(self.sheet(f"photographs: {{before: {name}}}\n"), 1, "lesson.yaml:5:23: error:", said)
        self.assertNotIn("sheet.pdf", self.files())

    def test_a_code_is_read_back_from_a_print_of_150_dots_an_inch(self):
        if not shutil.which("zbarimg"):
            self.skipTest("zbar-tools is not installed")
        for link in ("https://harling-lessons.example/h1", "https://a.example/" + "longer-path/" * 11):
            self.expect(self.sheet(f"drills: [H1]\nlink: {link}\n"), 0)
            tool("pdftoppm", "-r", "150", "-gray", "-png", self.folder / "sheet.pdf", self.folder / "page")
            read = [subprocess.run(["zbarimg", "-q", "--raw", "--set", "disable", "--set", "qrcode.enable", page],
                                   capture_output=True).stdout.decode().strip() for page in sorted(self.folder.glob("page*.png"))]
            self.assertEqual([r for r in read if r], [link])

    def test_logo_and_signature_come_from_the_record_or_the_style(self):
        logo = ('<svg xmlns="http://www.w3.org/2000/svg" width="120" height="40">'
                '<rect width="120" height="40" fill="#14532d"/></svg>')
        (self.folder / "logo.svg").write_text(logo)
        self.expect(self.sheet("marks: {logo: logo.svg, contact: [Kiln Lane 4]}\n"), 0)
        self.assertIn("Kiln Lane 4", tool("pdftotext", self.folder / "sheet.pdf", "-"))
        style = self.folder / "my" / "style"
        style.mkdir(parents=True)
        (style / "marks.yaml").write_text("logo: mark.svg\ncontact: [Mill Road 9]\n")
        (style / "mark.svg").write_text(logo)
        self.record()
        self.expect(run("lesson", "lesson.yaml", "-o", "styled.pdf", "--templates", "my", folder=self.folder), 0)
        self.assertIn("Mill Road 9", tool("pdftotext", self.folder / "styled.pdf", "-"))
        (style / "mark.svg").write_text(logo.replace("<rect", "<text>A</text><rect"))
        self.expect(run("lesson", "lesson.yaml", "-o", "none.pdf", "--templates", "my", folder=self.folder), 1,
                    "style/marks.yaml:1:7: error: the logo 'mark.svg' has letters in it")


class Style(InFolder):
    def templates(self, name, text):
        path = self.folder / "my" / "style" / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")

    def test_a_plan_of_ones_own_leaves_out_moves_and_adds(self):
        self.templates("pages.yaml", "- {title: Good to see you, text: [Ring the bell at the gate.]}\n"
                                     "- one thing\n- why\n- hold\n- drill\n- expect\n")
        self.expect(run("lesson", RIGHT_HAND, "-o", "sheet.pdf", "--templates", "my", folder=self.folder), 0)
        text = tool("pdftotext", self.folder / "sheet.pdf", "-")
        self.assertLess(text.index("Ring the bell"), text.index("What is my one thing?"))
        self.assertLess(text.index("Why did the ball do that?"), text.index("How should I hold it?"))
        self.assertNotIn("What is the evidence?", text)
        pages = text.split("\f")
        drill = next(i for i, page in enumerate(pages, start=1) if "Lay and close" in page and "Pass mark" in page)
        self.assertEqual(drill % 2, 1)
        self.assertEqual((len(pages) - 1) % 2, 0)

    def test_the_cautions_stay(self):
        self.templates("pages.yaml", "- one thing\n- drill\n")
        self.expect(run("lesson", RIGHT_HAND, "-o", "sheet.pdf", "--templates", "my", folder=self.folder), 1,
                    "my/style/pages.yaml: error: the page 'expect' is missing")

    def test_the_ink_of_each_page_is_told(self):
        done = self.expect(run("check", RIGHT_HAND, "--ink"), 0)
        found = re.findall(r"^page (\d+) \(([^)]*)\): ([\d.]+) % ink$", done.stdout.decode(), re.M)
        self.assertGreaterEqual(len(found), 6)
        for _, _, cover in found:
            self.assertLess(float(cover), 8)
            self.assertGreater(float(cover), 0.3)


if __name__ == "__main__":
    unittest.main()
