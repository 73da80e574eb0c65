"""House and people around a record, whole folders, new lessons, mail drafts and what is held, from outside."""
import email
import email.policy
import json
import re
import shutil
import subprocess

from program import RIGHT_HAND, ROOT, InFolder, run, tool

ACADEMY = ROOT / "examples" / "academy"

HOUSE = """academy: Low Meadow Golf School
coaches: [{name: Tom Harling, contact: "tom@low-meadow.example"}]
place: Low Meadow, bay 6
units: {distance: yards, speed: mph}
shots: {file: shots.csv, sign: right is positive, set aside: ["ball speed below 85 % of the block median"]}
conditions: {text: "indoors, mat", height: 80 m, temperature: 17}
aims: {face: {want: 2 L to 4 R, worth having: 2}}
kept for: 24
"""

BAG = "[{name: seven iron, loft: 32, lie: 62.5}, {name: nine iron, loft: 40.5, lie: 63.5}]"

PEOPLE = f"""- code: RU-04
  first name: Ruth
  family name: Millard
  hand: right
  glove: yes
  bag: {BAG}
  send to: ruth@post.example
- code: PI-07
  first name: Pia
  hand: left
  age: junior
  language: de
  guardian: {{name: "Lindqvist-Öberg, Petra Åsa Élodie Wilhelmina Maria von und zu Überlingen", address: petra@post.example}}
  kept until: 2027-07-31
"""

EIGHT = """student: RU-04
club: seven iron
aim: face
saw: The handle lay deep in your palm.
changed: The handle lies in your fingers.
grip: {before: {lay: palm, knuckles: 1}, after: {lay: fingers, knuckles: 2}}
drills: [H1]
next: 2026-05-28
"""

FULL = f"""student: {{name: Ruth, code: RU-04, hand: right}}
coach: {{name: Tom Harling, contact: "tom@low-meadow.example", academy: Low Meadow Golf School}}
place: Low Meadow, bay 6
date: 2026-05-14
language: en-GB
units: {{distance: yards, speed: mph}}
glove: yes
club: {{name: seven iron, loft: 32, lie: 62.5}}
bag: {BAG}
aim: {{measure: face, want: 2 L to 4 R, worth having: 2, named before: yes}}
saw: The handle lay deep in your palm.
changed: The handle lies in your fingers.
grip: {{before: {{lay: palm, knuckles: 1}}, after: {{lay: fingers, knuckles: 2}}}}
shots: {{file: shots.csv, sign: right is positive, set aside: ["ball speed below 85 % of the block median"]}}
conditions: {{text: "indoors, mat", height: 80 m, temperature: 17}}
drills: [H1]
next: 2026-05-28
"""

JUNIOR = """student: {code: PI-07, says: "Über den Teich"}
saw: Du hältst den Schläger wie einen Besen.
changed: Der Schläger liegt in den Fingern.
drills: [H1]
shots: none
"""


class Academy(InFolder):
    def setUp(self):
        super().setUp()
        self.record("academy/house.yaml", HOUSE)
        self.record("academy/people.yaml", PEOPLE)
        self.academy = self.folder / "academy"

    def lesson(self, name="ruth/2026-05-14", text=EIGHT, shots=True):
        path = self.record(f"academy/{name}/lesson.yaml", text)
        if shots:
            shutil.copy(RIGHT_HAND.parent / "shots.csv", path.parent / "shots.csv")
        return path


def canonical(pdf):
    """The PDF without the seal of what it was made from."""
    done = subprocess.run(["qpdf", "--qdf", "--static-id", str(pdf), "-"], capture_output=True, timeout=60)
    return re.sub(rb"/ID \[.*?\]", b"", done.stdout)


class EightFields(Academy):
    def test_eight_fields_print_the_sheet_of_the_full_record(self):
        short = self.lesson()
        full = self.record("alone/lesson.yaml", FULL)
        shutil.copy(RIGHT_HAND.parent / "shots.csv", full.parent / "shots.csv")
        self.expect(run("lesson", short, "-o", self.folder / "short.pdf"), 0)
        self.expect(run("lesson", full, "-o", self.folder / "full.pdf"), 0)
        self.assertGreater(len(canonical(self.folder / "short.pdf")), 10000)
        self.assertEqual(canonical(self.folder / "short.pdf"), canonical(self.folder / "full.pdf"))
        self.assertEqual(run("numbers", short, "--as", "json").stdout, run("numbers", full, "--as", "json").stdout)

    def test_a_sheet_is_made_again_when_the_house_changes_and_not_when_another_person_does(self):
        path, out = self.lesson(), self.folder / "sheet.pdf"
        self.expect(run("lesson", path, "-o", out), 0)
        first = out.read_bytes()
        self.record("academy/people.yaml", PEOPLE.replace("first name: Pia", "first name: Mia"))
        self.expect(run("lesson", path, "-o", out), 0)
        self.assertEqual(out.read_bytes(), first)
        self.record("academy/house.yaml", HOUSE.replace("Tom Harling", "Tim Harling"))
        self.expect(run("lesson", path, "-o", out), 0)
        self.assertIn("Tim Harling", tool("pdftotext", out, "-"))


class Enclosed(Academy):
    def again(self, path):
        """The sheet, what is taken out of it, and the sheet made from that alone."""
        out, parts = self.folder / "sheet.pdf", self.folder / "parts"
        self.expect(run("lesson", path, "-o", out, "--attach"), 0)
        shutil.rmtree(parts, ignore_errors=True)
        parts.mkdir()
        tool("pdfdetach", "-saveall", "-o", parts, out)
        for name in ("plain.pdf", "again.pdf"):
            (self.folder / name).unlink(missing_ok=True)
        self.expect(run("lesson", path, "-o", self.folder / "plain.pdf"), 0)
        self.expect(run("lesson", parts / "lesson.yaml", "-o", self.folder / "again.pdf"), 0)
        self.assertEqual(canonical(self.folder / "plain.pdf"), canonical(self.folder / "again.pdf"))
        return parts

    def test_a_sheet_with_house_and_people_is_made_again_from_what_is_in_it(self):
        parts = self.again(self.lesson())
        self.assertEqual(sorted(p.name for p in parts.iterdir()), ["house.yaml", "lesson.yaml", "people.yaml", "shots.csv"])
        self.assertIn("date: 2026-05-14", (parts / "lesson.yaml").read_text())

    def test_every_key_of_a_person_that_is_printed_goes_along_and_no_address(self):
        self.record("academy/people.yaml", PEOPLE.replace("  glove: yes\n", "  glove: no\n  coach: Tom\n  language: en-US\n  paper: A5\n"
                    "  large print: no\n  units: {distance: metres, speed: km/h}\n  print name: initials\n").replace(
                    "lie: 62.5}", 'lie: 62.5, face share: 57, share from: "our \\"forty\\" shots"}'))
        parts = self.again(self.lesson())
        people = (parts / "people.yaml").read_text(encoding="utf-8")
        for word in ("Millard", "post.example", "PI-07", "Pia"):
            self.assertNotIn(word, people)

    def test_a_junior_and_the_marks_of_the_house(self):
        shutil.copy(ROOT / "tests" / "cli" / "hold.jpg", self.academy / "signature.jpg")
        self.record("academy/house.yaml", HOUSE + 'marks: {signature: signature.jpg, accent: "#14532d"}\n')
        parts = self.again(self.lesson("pia/2026-05-14", JUNIOR, shots=False))
        self.assertIn("signature.jpg", [p.name for p in parts.iterdir()])
        self.assertNotIn("petra", (parts / "people.yaml").read_text(encoding="utf-8").lower())


class CheckFolder(Academy):
    def test_one_bad_record_harms_no_other(self):
        good = self.lesson()
        bad = self.lesson("ruth/2026-05-28", EIGHT.replace("drills: [H1]", "drils: [H1]").replace("2026-05-28", "2026-06-14"))
        done = self.expect(run("check", self.academy), 1, f"{bad}:7:1", "did you mean 'drills'?",
                           "'PI-07' has no lesson below this folder")
        self.assertIn(f"{good}: ready to print\n", done.stdout.decode())
        self.assertIn("1 student, 2 lessons, 1 ready to print", done.stdout.decode())

    def test_unknown_students_double_codes_and_missing_guardians_are_told(self):
        self.lesson()
        moved = self.lesson("ruth/2026-05-15", EIGHT.replace("RU-04", "RU-40"), shots=False)
        self.record("academy/people.yaml", PEOPLE + "- {code: ru-04, first name: Rudi, hand: left}\n"
                    "- {code: NO-14, first name: Noor, hand: right, age: junior}\n")
        done = self.expect(run("check", self.academy), 1, f"{moved}:1:10", "people.yaml does not know 'RU-40'",
                           "the code 'RU-04' is used twice", "the code 'ru-04' is used twice",
                           "NO-14 is a junior without a guardian")
        self.assertEqual(done.stderr.count("the code 'RU-04' is used twice"), 1)

    def test_shots_without_a_club_two_lessons_of_a_day_and_a_moved_folder_are_told(self):
        self.lesson()
        self.lesson("ruth/2026-05-15", EIGHT.replace("club: seven iron\n", ""))
        twice = self.lesson("again/2026-05-14")
        moved = self.lesson("ruth/2026-05-20", EIGHT + "date: 2026-05-19\n")
        done = run("check", self.academy)
        self.expect(done, 1, "the shots of this lesson have no club", "a second lesson of RU-04 on 2026-05-14",
                    "the date is 2026-05-19, the folder's 2026-05-20")
        self.assertTrue(str(twice) in done.stderr and str(moved) in done.stderr)

    def test_the_invented_academy_is_clean_to_the_last_label(self):
        done = self.expect(run("check", "--strict", ACADEMY), 0)
        self.assertIn("14 students, 35 lessons, 35 ready to print", done.stdout.decode())

    def test_the_files_beside_the_records_are_checked_by_name(self):
        for name in ("house.yaml", "people.yaml", "spring-term.yaml"):
            done = self.expect(run("check", "--strict", ACADEMY / name), 0)
            self.assertIn("nothing wrong", done.stdout.decode())
        wrong = self.record("academy/house.yaml", "acadmy: Low Meadow\n")
        done = self.expect(run("check", wrong), 1)
        self.assertIn("did you mean 'academy'?", done.stderr)


class Begin(Academy):
    def test_a_new_lesson_brings_the_last_ones_aim_plan_and_targets_and_the_way_to_it(self):
        self.lesson(text=EIGHT + "plan: {when: the kettle goes on}\ntargets:\n  - Two knuckles\nnotes: [Wait for her.]\n")
        done = self.expect(run("begin", self.academy, "--student", "RU-04", "--date", "2026-05-28"), 0)
        path = self.academy / "ruth" / "2026-05-28" / "lesson.yaml"
        self.assertIn(str(path), done.stdout.decode())
        text = path.read_text(encoding="utf-8")
        for line in ("student: RU-04\n", "date: 2026-05-28\n", "lesson: 2\n", "aim: face\n", "# drills: [H1] ", "last lesson: ../2026-05-14\n",
                     "# returned: {drill: H1, days done: ",
                     "plan: {when: the kettle goes on}\n", "targets:\n  - Two knuckles\n", "for the next coach: Wait for her."):
            self.assertIn(line, text)
        self.assertNotIn("2026-05-28\n", re.findall(r"^next:.*", text, re.M))
        self.expect(run("check", path), 1, "'saw' is empty", "'changed' is empty")
        path.write_text(text.replace("saw:\n", "saw: a\n").replace("changed:\n", "changed: b\n"), encoding="utf-8")
        self.expect(run("check", path), 0)

    def test_what_was_named_before_is_confirmed_anew(self):
        for aim, left in (("aim: {measure: face, want: 2 L to 4 R, named before: yes, worth having: 2}", "worth having: 2}"),
                          ("aim: {named before: yes, measure: face, want: 2 L to 4 R}", "aim: {measure: face, want: 2 L to 4 R}"),
                          ("aim:\n  measure: face\n  want: 2 L to 4 R\n  named before: yes", "  want: 2 L to 4 R\n#")):
            with self.subTest(aim=aim):
                self.lesson(text=EIGHT.replace("aim: face", aim))
                self.expect(run("begin", self.academy, "--student", "RU-04", "--date", "2026-05-28"), 0)
                path = self.academy / "ruth" / "2026-05-28" / "lesson.yaml"
                text = path.read_text(encoding="utf-8")
                self.assertIn(left, text)
                self.assertEqual(re.findall("^.*named before.*$", text, re.M),
                                 ["# Once it was said aloud, add to the aim: named before: yes"])
                path.write_text(text.replace("saw:\n", "saw: a\n").replace("changed:\n", "changed: b\n"), encoding="utf-8")
                self.expect(run("check", path), 0)
                path.unlink()
                (path.parent / "shots.csv").unlink()

    def test_a_name_in_the_place_of_a_code(self):
        for name in ("Ruth", "ruth", "Ruth Millard"):
            self.expect(run("begin", self.academy, "--student", name, "--date", "2026-05-28"), 1, "write --student RU-04")

    def test_the_table_has_the_columns_of_the_house_and_nothing_is_overwritten(self):
        self.record("academy/house.yaml", HOUSE.replace("sign: right is positive",
                    'sign: right is positive, columns: {face: "Blade, deg", carry: "Flight (yd)", block: "Part"}'))
        self.expect(run("begin", self.academy, "--student", "RU-04", "--date", "2026-05-28"), 0)
        here = self.academy / "RU-04" / "2026-05-28"
        self.assertEqual((here / "shots.csv").read_text(), 'number,Part,"Blade, deg",Flight (yd)\n')
        before = (here / "lesson.yaml").read_bytes()
        self.expect(run("begin", self.academy, "--student", "RU-04", "--date", "2026-05-28"), 1, "is there already")
        self.assertEqual((here / "lesson.yaml").read_bytes(), before)

    def test_an_unknown_code_and_a_wrong_date_are_told(self):
        self.expect(run("begin", self.academy, "--student", "RU-40", "--date", "2026-05-28"), 1, "did you mean 'RU-04'?")
        self.expect(run("begin", self.academy, "--student", "RU-04", "--date", "28.5.2026"), 2, "is no date")
        self.expect(run("begin", self.academy, "--student", "../x", "--date", "2026-05-28"), 2, "is no code")


class Mail(Academy):
    def draft(self, path):
        out = self.folder / "draft.eml"
        done = self.expect(run("mail", path, "-o", out), 0)
        raw = out.read_bytes()
        self.assertEqual(raw.count(b"\n"), raw.count(b"\r\n"))
        self.assertLessEqual(max(map(len, raw.split(b"\r\n"))), 78)  # RFC 5322, 2.1.1
        self.assertTrue(raw.isascii())
        return done, email.message_from_bytes(raw, policy=email.policy.default)

    def test_an_adults_draft_reads_back_field_by_field(self):
        path = self.lesson(text=EIGHT + "lesson: 3\n")
        done, mail = self.draft(path)
        self.assertEqual(mail["To"].addresses[0].display_name, "Ruth Millard")
        self.assertEqual(mail["To"].addresses[0].addr_spec, "ruth@post.example")
        self.assertEqual(mail["From"].addresses[0].addr_spec, "tom@low-meadow.example")
        self.assertEqual(mail["Subject"], "Lesson 3, 14 May 2026")
        self.assertEqual(mail["X-Unsent"], "1")
        self.assertEqual(mail["Date"].datetime.isoformat(), "2026-05-14T12:00:00+00:00")
        self.assertEqual([mail[h] for h in ("Cc", "Bcc", "Reply-To")], [None, None, None])
        self.assertEqual(mail.get_content_type(), "multipart/mixed")
        text, pdf = mail.iter_parts()
        self.assertEqual(text.get_content_type(), "text/plain")
        self.assertIn("Hello Ruth,", text.get_content())
        self.assertIn("What we changed: The handle lies in your fingers.", text.get_content())
        self.assertIn("Next lesson: 28 May 2026.", text.get_content())
        self.assertEqual(pdf.get_filename(), "RU-04-2026-05-14.pdf")
        self.assertEqual(pdf.get_content_type(), "application/pdf")
        self.expect(run("lesson", path, "-o", self.folder / "sheet.pdf"), 0)
        self.assertEqual(pdf.get_content(), (self.folder / "sheet.pdf").read_bytes())
        self.assertEqual(mail.defects + text.defects + pdf.defects, [])
        self.assertIn("r…h@post.example", done.stdout.decode())

    def test_a_juniors_draft_goes_to_the_guardian_alone_in_the_juniors_language(self):
        _, mail = self.draft(self.lesson("pia/2026-06-10", JUNIOR, shots=False))
        [to] = mail["To"].addresses
        self.assertEqual(" ".join(to.display_name.split()), "Lindqvist-Öberg, Petra Åsa Élodie Wilhelmina Maria von und zu Überlingen")
        self.assertEqual(to.addr_spec, "petra@post.example")
        self.assertEqual(mail["Subject"], "Pia: Stunde vom 10. Juni 2026")
        self.assertEqual(mail["Content-Language"], "de")
        text = next(mail.iter_parts()).get_content()
        self.assertIn("Hallo Petra Åsa Élodie Wilhelmina Maria von und zu Überlingen Lindqvist-Öberg,", text)
        self.assertIn("Blatt zur Stunde von Pia", text)
        self.assertIn("Der Schläger liegt in den Fingern.", text)
        self.assertNotIn("Über den Teich", text)

    def test_a_name_with_a_comma_and_quotes_is_quoted(self):
        self.record("academy/people.yaml", PEOPLE.replace("send to: ruth@post.example",
                    "send to: {name: 'Millard, Ruth \"Ru\"', address: ruth@post.example}"))
        _, mail = self.draft(self.lesson())
        self.assertEqual(mail["To"].addresses[0].display_name, 'Millard, Ruth "Ru"')
        self.assertEqual(len(mail["To"].addresses), 1)

    def test_the_same_lesson_gives_the_same_draft(self):
        path = self.lesson()
        self.draft(path)
        first = (self.folder / "draft.eml").read_bytes()
        self.draft(path)
        self.assertEqual((self.folder / "draft.eml").read_bytes(), first)

    def test_what_does_not_belong_together_is_refused_and_nothing_is_written(self):
        path, out = self.lesson(), self.folder / "draft.eml"

        def refused(*said, extra=()):
            self.expect(run("mail", path, "-o", out, *extra), 1, *said)
            self.assertFalse(out.exists())

        self.expect(run("lesson", self.lesson("pia/2026-06-10", JUNIOR, shots=False), "-o", self.folder / "pia.pdf"), 0)
        refused("is not the sheet of this record", extra=("--pdf", self.folder / "pia.pdf"))
        path.write_text(EIGHT.replace("student: RU-04", "student: {code: RU-04, name: Mel}"), encoding="utf-8")
        refused("the name of RU-04 is 'Ruth' in people.yaml, here 'Mel'")
        path.write_text(EIGHT.replace("student: RU-04", "student: {code: XX-01, name: Ruth, hand: right}"), encoding="utf-8")
        refused("people.yaml knows nobody of the code 'XX-01'")
        path.write_text(EIGHT, encoding="utf-8")
        self.record("academy/people.yaml", PEOPLE.replace("  send to: ruth@post.example\n", ""))
        refused("RU-04 has no e-mail address")
        (self.academy / "people.yaml").unlink()
        path.write_text(FULL, encoding="utf-8")
        refused("no people.yaml says where this sheet may go")

    def test_the_sheet_of_this_record_may_be_named(self):
        path, sheet = self.lesson(), self.folder / "sheet.pdf"
        self.expect(run("lesson", path, "-o", sheet), 0)
        self.expect(run("mail", path, "-o", self.folder / "a.eml", "--pdf", sheet), 0)
        self.expect(run("mail", path, "-o", self.folder / "b.eml"), 0)
        self.assertEqual((self.folder / "a.eml").read_bytes(), (self.folder / "b.eml").read_bytes())

    def test_a_guardian_without_an_address_stops_that_draft_alone(self):
        ruth, pia = self.lesson(), self.lesson("pia/2026-06-10", JUNIOR, shots=False)
        self.record("academy/people.yaml", re.sub(r", address: petra@post.example", "", PEOPLE))
        self.expect(run("mail", ruth, pia, "-o", self.folder / "out"), 1, "the guardian of PI-07 has no e-mail address")
        self.assertEqual([p.name for p in (self.folder / "out").iterdir()], ["RU-04-2026-05-14.eml"])


class Held(Academy):
    def test_what_is_held_of_one_student_is_told_as_text_and_on_one_page(self):
        self.lesson()
        said = self.expect(run("held", self.academy, "--student", "RU-04"), 0).stdout.decode()
        for part in ("What we hold about Ruth Millard", "ruth@post.example", "14 May 2026: the record, 24 shots, 1 drill",
                     "24 months after the last lesson: 14 May 2028", "No date of birth"):
            self.assertIn(part, said)
        self.assertNotIn(str(self.folder), said)
        out = self.folder / "held.pdf"
        self.expect(run("held", self.academy, "--student", "RU-04", "-o", out), 0)
        self.assertIn("Pages:           1\n", tool("pdfinfo", out))
        self.assertIn("What we hold about Ruth Millard", tool("pdftotext", out, "-"))

    def test_pain_that_is_noted_is_held_and_said(self):
        self.lesson()
        self.lesson("ruth/2026-05-28", EIGHT.replace("drills: [H1]", "pain: yes").replace("2026-05-28", "2026-06-14"))
        claims = {"en-GB": ("28 May 2026", "no notes on health", "something hurt"),
                  "de": ("28. Mai 2026", "keine Angaben zur Gesundheit", "etwas wehtat"),
                  "fr": ("28 mai 2026", "ni notes sur la sant\u00e9", "faisait mal"),
                  "es": ("28 de mayo de 2026", "ni notas de salud", "algo dol\u00eda"),
                  "sv": ("28 maj 2026", "inga anteckningar om h\u00e4lsa", "gjorde ont")}
        for language, (day, claim, hurt) in claims.items():
            with self.subTest(language=language):
                self.record("academy/people.yaml", PEOPLE.replace("  glove: yes\n", f"  glove: yes\n  language: {language}\n"))
                said = self.expect(run("held", self.academy, "--student", "RU-04"), 0).stdout.decode().replace("\u00a0", " ")
                self.assertNotIn(claim, said)
                self.assertEqual(re.findall(rf"^.*{hurt}.*$", said, re.M)[0].strip()[:len(day) + 1], f"{day}:")
                self.assertEqual(len(re.findall(hurt, said)), 1)
        (self.academy / "ruth/2026-05-28/lesson.yaml").unlink()
        said = self.expect(run("held", self.academy, "--student", "RU-04"), 0).stdout.decode()
        self.assertIn("inga anteckningar om h\u00e4lsa", said)
        self.assertNotIn("gjorde ont", said)

    def test_term_files_that_name_the_student_are_held_too(self):
        self.lesson()
        self.record("academy/spring.yaml", "term: Spring\nfrom: 2026-03-01\nto: 2026-06-30\nstudents: [RU-04]\n")
        self.record("academy/summer.yaml", "term: Summer\nfrom: 2026-07-01\nto: 2026-08-30\nstudents: [PI-07]\n")
        (self.academy / "gone.yaml").symlink_to("nowhere.yaml")  # ends no search
        said = self.expect(run("held", self.academy, "--student", "RU-04"), 0).stdout.decode()
        self.assertIn("In term files", said)
        self.assertIn("spring.yaml", said)
        self.assertNotIn("summer.yaml", said)

    def test_what_is_due_for_deletion_is_listed_and_left_alone(self):
        path = self.lesson("pia/2026-06-10", JUNIOR, shots=False)
        early = self.expect(run("held", self.academy, "--due", "2027-07-30"), 0, "no date of deletion is known for RU-04")
        self.assertEqual(early.stdout.decode(), "Nothing is due by 2027-07-30.\n")
        due = self.expect(run("held", self.academy, "--due", "2027-07-31"), 0).stdout.decode()
        self.assertIn("PI-07 Pia, kept until 2027-07-31", due)
        self.assertIn(str(path.parent), due)
        self.assertTrue(path.exists())

    def test_no_path_and_no_device_stands_in_a_sheet_or_a_draft(self):
        path = self.lesson()
        self.expect(run("lesson", path, "-o", self.folder / "sheet.pdf"), 0)
        self.expect(run("mail", path, "-o", self.folder / "draft.eml"), 0)
        inside = canonical(self.folder / "sheet.pdf") + (self.folder / "draft.eml").read_bytes()
        for secret in (str(self.folder), "shots.csv", "people.yaml", "petra@"):
            self.assertNotIn(secret.encode(), inside)
        self.assertNotIn(b"ruth@post.example", canonical(self.folder / "sheet.pdf"))


class Schemas(Academy):
    """The schemas name the keys that the readers know, no more and no fewer."""

    def known(self, done):
        return set(re.split(r", | or ", re.search(r"keys here are (.*)", done.stderr).group(1)))

    def test_the_schemas_of_house_and_people_have_the_keys_of_the_readers(self):
        path = self.lesson()
        schemas = ROOT / "templates" / "schema"
        self.record("academy/house.yaml", "zzzzzzzz: 1\n" + HOUSE)
        house = json.loads((schemas / "house.json").read_text(encoding="utf-8"))
        self.assertEqual(self.known(run("check", path)), set(house["properties"]))
        self.record("academy/house.yaml", HOUSE)
        self.record("academy/people.yaml", PEOPLE.replace("  glove: yes\n", "  zzzzzzzz: 1\n"))
        people = json.loads((schemas / "people.json").read_text(encoding="utf-8"))
        self.assertEqual(self.known(run("check", path)), set(people["items"]["properties"]))

    def test_the_schema_of_a_term_has_the_keys_of_the_readers(self):
        term = json.loads((ROOT / "templates" / "schema" / "term.json").read_text(encoding="utf-8"))
        path = self.record("academy/term.yaml", "zzzzzzzz: 1\nterm: Spring\nfrom: 2026-03-01\nto: 2026-06-30\n")
        self.assertEqual(self.known(run("check", path)), set(term["properties"]))
        path = self.record("academy/term.yaml", "term: Spring\nfrom: 2026-03-01\nto: 2026-06-30\n"
                                                "students: [{code: RU-04, zzzzzzzz: 1}]\n")
        student = next(one for one in term["properties"]["students"]["items"]["anyOf"] if "properties" in one)
        self.assertEqual(self.known(run("check", path)), set(student["properties"]))

    def test_the_schema_of_a_lesson_has_no_key_that_the_reader_does_not_know(self):
        path = self.lesson(text="zzzzzzzz: 1\n" + EIGHT)
        lesson = json.loads((ROOT / "templates" / "schema" / "lesson.json").read_text(encoding="utf-8"))
        self.assertLessEqual(set(lesson["properties"]), self.known(run("check", path)))
