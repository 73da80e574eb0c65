"""Slips of a first day: files of other names, columns and codes that do not meet, targets that are no folder."""
import shutil

from program import SMALL_RECORD, InFolder, run

HOUSE = """academy: Thornbeck Golf Barn
coaches: [{name: Wil Aster, contact: "wil@thornbeck.example"}]
units: {distance: yards, speed: mph}
shots: {file: shots.csv, sign: right is positive}
aims: {face: {want: 2 L to 4 R, worth having: 2}}
"""

PEOPLE = """- code: BR-01
  first name: Bram
  hand: right
  bag: [{name: seven iron, loft: 32, lie: 62.5}, {name: pitching wedge, loft: 45, lie: 64}]
  send to: bram@odell.example
- code: LO-02
  first name: Lotte
  hand: right
  age: junior
  guardian: {name: Marit Kvist, address: marit@kvist.example}
- code: SU-03
  first name: Sunil
  hand: left
  send to: sunil@rao.example
"""

LESSON = """student: BR-01
club: seven iron
aim: face
saw: The handle ran deep through your palm.
changed: The handle lies in your fingers.
drills: [H1]
"""

SHOTS = "number,block,face,path\n" + "".join(
    f"{n},{'before' if n < 9 else 'after'},{face},{path}\n"
    for n, (face, path) in enumerate([(8.1, -2), (9.4, -3.1), (6.8, -1.5), (10.2, -2.6), (7.7, -2.2), (8.8, -3.4),
                                      (11, -2.9), (7.1, -1.1), (3.3, -2.4), (1.9, -2.1), (4.6, -3), (2.2, -1.7),
                                      (0.6, -2.5), (3.9, -2.3), (2.8, -1.9), (5.1, -3.2)], 1))

TERM = """term: Spring 2026
from: 2026-03-01
to: 2026-04-30
lessons: .
students: [BR-01, LO-02, SU-03]
"""


class Academy(InFolder):
    def setUp(self):
        super().setUp()
        self.record("house.yaml", HOUSE)
        self.record("people.yaml", PEOPLE)
        self.path = self.lesson("BR-01")
        self.day = self.path.parent
        self.lesson("LO-02")
        self.lesson("SU-03")

    def lesson(self, code, day="2026-03-03"):
        self.record(f"{code}/{day}/shots.csv", SHOTS)
        return self.record(f"{code}/{day}/lesson.yaml", LESSON.replace("BR-01", code))

    def write(self, path, old, new):
        text = path.read_text(encoding="utf-8")
        self.assertIn(old, text)
        path.write_text(text.replace(old, new), encoding="utf-8")

    def check(self, what, code, *said, never=()):
        done = self.expect(run("check", what, folder=self.folder), code, *said)
        for text in never:
            self.assertNotIn(text, done.stderr)
        return done

    def test_nothing_of_all_this_is_told_of_a_whole_academy(self):
        for what in (".", "house.yaml", "people.yaml", self.path):
            done = run("check", "--strict", what, folder=self.folder)
            self.expect(done, 0)
            self.assertNotIn("warning", done.stderr)


class SharedFiles(Academy):
    def test_people_alone_have_the_faults_that_the_folder_finds(self):
        text = PEOPLE.replace("hand: left", "hand: lefty").replace("sunil@rao", "sunil.rao").replace(
            "LO-02", "BR-01").replace("loft: 32", "loft: 3.2")
        self.record("people.yaml", text)
        said = ("people.yaml:13:9", "did you mean 'left'?", "the code 'BR-01' is used twice",
                "must be an e-mail address", "people.yaml:4:9: warning: a loft of 3.2° is far from the 32°")
        self.check("people.yaml", 1, *said)
        self.check(".", 1, *said)

    def test_a_house_alone_has_its_pictures_looked_at(self):
        self.record("house.yaml", HOUSE + 'marks: {logo: nothere.svg, accent: blue}\n')
        self.check("house.yaml", 1, "the logo 'nothere.svg' cannot be read", "'accent' must be a colour")

    def test_drills_alone_may_not_drop_a_caution(self):
        self.record("drills.yaml", "- {id: F6, family: face, space: swing, name: A, purpose: B, need: C, dose: D, "
                    "check: E, steps: [Go.], easier: X9}\n")
        self.check("drills.yaml", 1, "names 'X9' as its easier one")
        done = self.check(".", 1)
        self.assertEqual(done.stderr.count("names 'X9' as its easier one"), 1)
        done = self.expect(run("lesson", ".", "-o", "out/", folder=self.folder), 1, "drills.yaml:1:3")
        self.assertEqual(done.stderr.count("names 'X9' as its easier one"), 1)
        self.assertEqual(done.stderr.count(": not printed for what is told above"), 2)

    def test_a_key_to_add_is_shown_once(self):
        self.record("drills.yaml", "- {id: OWN1, family: hold}\n")
        done = self.check("drills.yaml", 1, "a line such as 'check: Are two knuckles in sight?'")
        self.assertNotIn("check: check:", done.stderr)

    def test_one_fault_of_people_is_one_message(self):
        self.record("people.yaml", PEOPLE.replace("  guardian: {name: Marit Kvist, address: marit@kvist.example}\n", ""))
        done = self.check(".", 1, "LO-02 is a junior without a guardian", "1 lesson waits for house.yaml")
        self.assertEqual(done.stderr.count("error:"), 1)
        self.assertIn("3 lessons, 2 ready to print", done.stdout.decode())
        done = self.expect(run("mail", "LO-02", "-o", "out/", folder=self.folder), 1)
        self.assertEqual(done.stderr.count("error:"), 1)

    def test_files_of_nearly_the_right_name_are_named(self):
        (self.folder / "people.yaml").rename(self.folder / "People.yaml")
        self.check(self.path, 1, "People.yaml: warning: this file is not read for its name", "call it people.yaml")
        self.check("People.yaml", 0, "not read for its name")
        (self.folder / "house.yaml").rename(self.folder / "house.yml")
        self.check(self.path, 1, "house.yml: warning: this file is not read for its name")

    def test_the_file_that_declares_the_table_is_named(self):
        self.record("house.yaml", HOUSE.replace(", sign: right is positive", ""))
        self.check(self.path, 1, "add to 'shots' in house.yaml: sign: right is positive")


    def test_a_student_behind_a_fault_of_people_is_not_called_unknown(self):
        self.record("people.yaml", PEOPLE.replace("  hand: right\n  age", " hand: right\n  age"))
        self.check(".", 1, "people.yaml:", "3 lessons wait for house.yaml", never=["does not know", "needs a hand"])
        self.record("people.yaml", PEOPLE.replace("SU-03", "SU-04"))
        self.check(".", 1, "people.yaml does not know 'SU-03'")


class TablesBeside(Academy):
    def test_a_table_that_is_not_read_is_named(self):
        for name, way in (("shots.xlsx", "as CSV under the name shots.csv"), ("Shots.csv", "call it shots.csv"),
                          ("shots.csv.csv", "call it shots.csv"), ("schlaege.csv", "add 'shots: schlaege.csv'")):
            with self.subTest(name=name):
                (self.day / "shots.csv").rename(self.day / name)
                done = self.check(self.path, 0, f"warning: '{name}' beside the record is not read", way)
                self.assertNotIn("there is no shot table", done.stderr)
                (self.day / name).rename(self.day / "shots.csv")

    def test_a_record_that_names_no_table(self):
        self.record("house.yaml", HOUSE.replace("shots: {", "# shots: {"))
        self.check(self.path, 0, "'shots.csv' beside the record is not read", "add 'shots: shots.csv'",
                   never=["there is no shot table"])
        self.write(self.path, "drills", "shots: none\ndrills")
        self.check(self.path, 0, never=["beside the record", "there is no shot table"])

    def test_a_table_with_a_header_only(self):
        (self.day / "shots.csv").write_text("number,block,face,path\n")
        self.check(self.path, 0, "note: no shots stand in 'shots.csv' beside the record, so the aim gets no verdict",
                   never=["there is no shot table", "warning"])

    def test_a_named_table_with_a_header_only_leads_in_no_circle(self):
        self.record("house.yaml", HOUSE.replace("shots: {file: shots.csv, sign: right is positive}\n", ""))
        (self.day / "shots.csv").write_text("number,block,face,path\n")
        self.check(self.path, 0, never=["beside the record is not read"])
        self.write(self.path, "drills", "shots: shots.csv\ndrills")
        self.check(self.path, 0, "note: no shots stand in 'shots.csv'", never=["error", "warning"])
        (self.day / "shots.csv").write_text(" \n")
        self.check(self.path, 1, "error")

    def test_one_name_typed_in_two_ways(self):
        self.write(self.path, "drills", "shots: Schl\u00e4ge.csv\ndrills")
        (self.day / "shots.csv").rename(self.day / "Schla\u0308ge.csv")
        self.check(self.path, 1, "cannot be read", "type the name anew", "plain letters, Schlaege.csv", never=["letter by letter"])

    def test_a_table_that_is_named_and_lies_there_under_another_name(self):
        self.write(self.path, "drills", "shots: shots.csv\ndrills")
        (self.day / "shots.csv").rename(self.day / "shots.csv.txt")
        self.check(self.path, 1, "the shot table 'shots.csv' cannot be read", "'shots.csv.txt' lies there")


class Named(Academy):
    def test_a_photograph_under_another_case(self):
        (self.day / "BEFORE.JPG").write_bytes(b"x")
        (self.day / "Apre\u0300s.jpg").write_bytes(b"x")
        self.write(self.path, "drills", "photographs: {before: before.jpg, after: Apr\u00e8s.jpg}\ndrills")
        self.check(self.path, 1, "'BEFORE.JPG' lies there", "type the name anew", "Apres.jpg")

    def test_a_drill_by_its_name_and_one_that_is_not_there(self):
        for name, said in (("lay and close", "write its code: H1"), ("h1", "write its code: H1"), ("H9", "H1 to H8 are known"),
                           ("A7", "A1 is known"), ("OWN7", "name a drill of the library")):
            with self.subTest(name=name):
                self.record("BR-01/2026-03-03/lesson.yaml", LESSON.replace("H1", name))
                self.check(self.path, 1, f"no drill is called '{name}'", said, never=["did you mean"])

    def test_an_ending_that_is_not_written_is_refused(self):
        self.expect(run("lesson", self.path, "-o", "a.docx", folder=self.folder), 2, "a sheet is written as PDF or text, not as 'a.docx'",
                    "hint: -o a.pdf or -o a.txt")
        self.assertFalse((self.folder / "a.docx").exists())
        self.expect(run("lesson", self.path, "-o", "a.md", "--as", "text", folder=self.folder), 0)
        self.expect(run("lesson", self.path, "-o", "A.PDF", folder=self.folder), 0)

    def test_marks_on_letters_stay_letters_in_names_of_files(self):
        for name in ("Fr\u00fchling", "Fru\u0308hling"):
            text = LESSON.replace("student: BR-01", f"student: {{name: {name}, hand: right}}")
            self.record("BR-01/2026-03-03/lesson.yaml", text)
            self.expect(run("lesson", self.path, "-o", "out/", folder=self.folder), 0)
            self.assertTrue((self.folder / "out" / "Fruehling-2026-03-03.pdf").exists())


class ThreeDrills(Academy):
    def test_the_third_page_is_not_the_second(self):
        self.record("BR-01/2026-03-03/lesson.yaml", LESSON.replace("[H1]", "[H1, F2, P1]"))
        self.expect(run("lesson", self.path, "-o", "a.txt", folder=self.folder), 0, "warning: 3 drills are named")
        text = (self.folder / "a.txt").read_text(encoding="utf-8")
        self.assertEqual((text.count("What is my second drill?"), text.count("What is my next drill?")), (1, 1))


class Records(Academy):
    def test_two_lessons_of_one_number(self):
        self.write(self.path, "club:", "lesson: 4\nclub:")
        second = self.lesson("BR-01", "2026-03-17")
        self.write(second, "club:", "lesson: 4\nclub:")
        done = self.check(".", 0, "2026-03-17/lesson.yaml: warning: this is lesson 4 of BR-01, and so is that of 2026-03-03")
        self.assertEqual(done.stderr.count("this is lesson"), 1)
        self.write(second, "lesson: 4", "lesson: 5")
        self.check(".", 0, never=["this is lesson"])

    def test_an_evening_of_slips_in_one_record(self):
        self.write(self.path, "drills: [H1]", "pain: yes\ndrills: [H1]\ngrip: {before: {knuckles: 2}, after: {knuckles: 2}}")
        said = ("'pain: yes' is written, and yet a drill is named", "the hold 'after' is the hold 'before'")
        self.check(self.path, 0, *said)
        self.expect(run("lesson", self.path, "-o", "a.pdf", folder=self.folder), 0, *said)

    def test_a_record_of_nearly_the_right_name_is_told_by_every_command(self):
        for name in ("lesson.yaml.txt", "Lesson.yml", "LESSON.YAML", "lesson.txt"):
            with self.subTest(name=name):
                self.path.rename(self.day / name)
                said = f"{name}: note: this lesson is left out, for it is not called lesson.yaml"
                self.check("BR-01", 3, said)
                self.check(".", 0, said)
                self.expect(run("lesson", ".", "-o", "out/", folder=self.folder), 0, said)
                self.expect(run("mail", ".", "-o", "out/", folder=self.folder), 0, said)
                (self.day / name).rename(self.path)

    def test_the_date_and_the_folder_are_compared_for_one_record_too(self):
        self.write(self.path, "club:", "date: 2026-03-04\nclub:")
        for what in (self.path, "."):
            done = self.check(what, 0, "lesson.yaml:2:7: warning: the date is 2026-03-04, the folder's 2026-03-03")
            self.assertEqual(done.stderr.count("the folder's"), 1)

    def test_a_students_folder_says_nothing_of_the_others(self):
        self.check("LO-02", 0, never=["has no lesson"])
        shutil.rmtree(self.folder / "SU-03")
        self.check(".", 0, "'SU-03' has no lesson below this folder")

    def test_one_lesson_twice_is_a_matter_of_date_or_revision(self):
        shutil.copytree(self.day, self.folder / "BR-01" / "again")
        self.write(self.folder / "BR-01" / "again" / "lesson.yaml", "club:", "date: 2026-03-03\nclub:")
        self.expect(run("lesson", "BR-01", "-o", "out/", folder=self.folder), 1, "correct the date of one", "'revision: 2'")

    def test_a_folder_for_a_record_is_told(self):
        for words in (("numbers", "BR-01"), ("figure", "BR-01", "scatter")):
            self.expect(run(*words, folder=self.folder), 3, "'BR-01' is a folder, and one record is wanted", "BR-01/lesson.yaml")


class Returned(Academy):
    def second(self, returned):
        path = self.lesson("BR-01", "2026-03-17")
        self.write(path, "drills", f"last lesson: ../2026-03-03\nreturned: {returned}\ndrills")
        return path

    def test_more_days_than_there_were(self):
        self.check(self.second("{drill: H1, days done: 29}"), 0, "lesson.yaml:7:34: warning: 29 days are done, and 14 lie between",
                   "2026-03-03")
        self.check(self.second("{drill: H1, days done: 14}"), 0, never=["warning"])

    def test_a_count_that_is_not_by_the_tries_of_the_log(self):
        self.record("BR-01/2026-03-03/lesson.yaml", LESSON.replace("drills: [H1]", "drills: [H4]"))
        self.check(self.second("{drill: H4, right first: 8 of 10}"), 0, "counts by 6 tries a day, not by 10", "'right first: 5 of 6'")
        self.check(self.second("{right: 8 of 10}"), 0, "lesson.yaml:7:19: warning: the log of the last sheet counts by 6")
        for fine in ("5 of 6", "10 of 12"):
            self.check(self.second(f"{{drill: H4, right first: {fine}}}"), 0, never=["warning"])
        self.record("BR-01/2026-03-03/lesson.yaml", LESSON.replace("drills: [H1]", 'drills: [{id: H4, dose: "ten a day", tries: 10}]'))
        self.check(self.second("{drill: H4, right first: 8 of 10}"), 0, never=["warning"])

    def test_a_folder_knows_the_lesson_before_without_being_told(self):
        path = self.second("{drill: F1, days done: 29}")
        self.write(path, "last lesson: ../2026-03-03\n", "")
        self.check(path, 0, never=["warning"])
        self.check(".", 0, "29 days are done, and 14 lie between", "did not give 'F1'",
                   "'returned' stands here without 'last lesson'", "add the line 'last lesson: ../2026-03-03'")

    def test_a_drill_that_the_last_sheet_did_not_give(self):
        self.check(self.second("[{drill: H1}, {drill: F1}]"), 0, "the last sheet, of 2026-03-03, did not give 'F1'", "its drills: H1",
                   never=["did not give 'H1'"])
        self.record("BR-01/2026-03-03/lesson.yaml", LESSON.replace("drills: [H1]\n", ""))
        self.check(self.second("{drill: F1}"), 0, never=["warning"])


class Clubs(Academy):
    def test_a_club_that_nobody_knows(self):
        for name, meant in (("seven irom", "seven iron"), ("7 iron", "seven iron"), ("7i", "seven iron"), ("Iron 9", "nine iron"),
                            ("PW", "pitching wedge"), ("sevn iron", "seven iron")):
            with self.subTest(name=name):
                self.record("BR-01/2026-03-03/lesson.yaml", LESSON.replace("seven iron", name))
                self.check(self.path, 0, f"lesson.yaml:2:7: warning: '{name}' is in no bag", f"did you mean '{meant}'?")

    def test_a_club_without_a_neighbour_is_asked_for_its_loft(self):
        self.record("BR-01/2026-03-03/lesson.yaml", LESSON.replace("seven iron", "four iron"))
        self.check(self.path, 0, "'four iron' is in no bag", "say its loft", never=["did you mean"])

    def test_usual_clubs_in_the_language_of_the_sheet_and_lessons_without_shots_are_fine(self):
        for name, more in (("Eisen 7", "language: de\n"), ("seven-iron", ""), ("Driver", ""), ("putter", "shots: none\n")):
            with self.subTest(name=name):
                self.record("BR-01/2026-03-03/lesson.yaml", more + LESSON.replace("seven iron", name))
                self.check(self.path, 0, never=["warning"])

    def test_a_loft_without_its_decimal_point_in_place(self):
        self.record("BR-01/2026-03-03/lesson.yaml", LESSON.replace("seven iron", "{name: seven iron, loft: 3.2}"))
        self.check(self.path, 0, "a loft of 3.2° is far from the 32° that are usual for 'seven iron'")


class Terms(Academy):
    def test_codes_of_the_register_and_of_the_lessons_are_compared(self):
        self.record("term.yaml", TERM.replace("LO-02", "LO-20"))
        said = ("term.yaml:5:19: warning: nobody has the code 'LO-20'", "did you mean 'LO-02'?",
                "'LO-02' has a lesson in this term and is not in the register")
        self.check("term.yaml", 0, *said)
        self.expect(run("term", "term.yaml", "-o", "out", folder=self.folder), 0, *said)
        self.record("term.yaml", TERM)
        self.check("term.yaml", 0, never=["warning"])

    def test_a_folder_of_lessons_that_is_not_there(self):
        self.record("term.yaml", TERM.replace("lessons: .", "lessons: lesons"))
        self.check("term.yaml", 1, "term.yaml:4:10: error: there is no folder 'lesons'")


class Templates(Academy):
    INKS = 'accent: "#14532d"\n'

    def told(self, code, *said, never=()):
        done = self.expect(run("check", self.path, "--templates", "my", folder=self.folder), code, *said)
        for text in never:
            self.assertNotIn(text, done.stderr)

    def test_a_folder_that_is_not_there_or_of_no_use(self):
        self.told(1, "there is no folder 'my' of templates")
        self.record("my/readme.md", "Mine.")
        self.told(1, "nothing in the folder 'my' is read as a template")

    def test_a_new_record_from_no_templates_is_not_begun(self):
        self.expect(run("begin", "new", "--templates", "my", folder=self.folder), 1, "there is no folder 'my' of templates")
        self.assertFalse((self.folder / "new").exists())

    def test_files_that_are_not_read_are_named(self):
        self.record("my/Style/inks.yaml", self.INKS)
        self.told(1, "error: 'my/Style/inks.yaml' is not read", "did you mean 'my/style/inks.yaml'?")
        self.record("my/style/inks.yaml", self.INKS)
        self.record("my/style/page.yaml", "- one thing\n")
        self.record("my/pages.yaml", "- one thing\n")
        self.told(0, "warning: 'my/style/page.yaml' is not read", "warning: 'my/pages.yaml' is not read",
                  "did you mean 'my/style/pages.yaml'?")

    def test_what_belongs_there_is_not_doubted(self):
        self.record("my/style/inks.yaml", self.INKS)
        self.record("my/words/en-GB/own.txt", "")
        self.record("my/style/logo.svg", "")
        self.record("my/notes.txt", "To do.")
        self.told(0, never=["is not read"])


class Targets(Academy):
    def test_many_files_need_a_folder(self):
        for words, said in ((("lesson", ".", "-o", "o.pdf"), "'o.pdf' is one file"), (("mail", ".", "-o", "x.eml"), "'x.eml' is one file"),
                            (("mail", ".", "-o", "-"), "standard output holds one draft"),
                            (("lesson", ".", "-o", "-"), "standard output holds one sheet")):
            before = self.files()
            self.expect(run(*words, folder=self.folder), 2, said, "hint: -o FOLDER/")
            self.assertEqual(self.files(), before)
            self.assertFalse((self.folder / words[-1]).exists())
        self.record("term.yaml", TERM)
        self.expect(run("term", "term.yaml", "-o", "t.pdf", folder=self.folder), 2, "'t.pdf' is one file")

    def test_no_register_record_or_table_is_written_over(self):
        one, other = "BR-01/2026-03-03/lesson.yaml", "other/people.yaml"
        self.record(other, PEOPLE)
        held = ("held", ".", "--student", "BR-01")
        before = {name: (self.folder / name).read_bytes() for name in self.files()}
        for words, said, way in ((held, "what is held is written as PDF or text, not as", ("{}.pdf", "{}.txt")),
                                 (("held", ".", "--due", "2030-01-01"), "the list of what is due is written as text, not as", ("{}.txt",)),
                                 (("mail", one), "a draft is written as mail, not as", ("{}.eml",)),
                                 (("lesson", one, "--as", "text"), "a sheet is written as PDF or text, not as", ("{}.pdf", "{}.txt")),
                                 (("lesson", one, "--as", "pdf"), "a sheet is written as PDF or text, not as", ("{}.pdf", "{}.txt"))):
            for target in ("people.yaml", other, "SU-03/2026-03-03/lesson.yaml", "LO-02/2026-03-03/shots.csv", "new.YML", "new.tsv"):
                with self.subTest(words=words, target=target):
                    ways = " or ".join("-o " + way.format(target.rsplit(".", 1)[0]) for way in way)
                    self.expect(run(*words, "-o", target, folder=self.folder), 2, f"{said} '{target}'", f"hint: {ways}\n")
        self.assertEqual({name: (self.folder / name).read_bytes() for name in self.files()}, before)

    def test_what_is_held_is_never_written_over_what_was_read(self):
        self.record("SU-03/2026-03-03/shots.txt", SHOTS)
        self.write(self.folder / "SU-03/2026-03-03/lesson.yaml", "drills", "shots: shots.txt\ndrills")
        for student in ("SU-03", "BR-01"):
            self.expect(run("held", ".", "--student", student, "-o", "SU-03/2026-03-03/shots.txt", folder=self.folder), 3,
                        "it is an input of this run")
        self.assertEqual((self.folder / "SU-03/2026-03-03/shots.txt").read_text(encoding="utf-8"), SHOTS)

    def test_what_is_held_is_a_pdf_in_capitals_too(self):
        self.expect(run("held", ".", "--student", "BR-01", "-o", "H.PDF", folder=self.folder), 0)
        self.assertTrue((self.folder / "H.PDF").read_bytes().startswith(b"%PDF"))
        self.expect(run("lesson", self.path, "-o", "A.TXT", folder=self.folder), 0)
        self.assertIn("What is my one thing?", (self.folder / "A.TXT").read_text(encoding="utf-8"))

    def test_a_picture_of_the_sheet_is_not_written_over_the_logo_or_the_photograph(self):
        self.record("logo.svg", '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><path d="M0 0h9v9z"/></svg>')
        self.record("house.yaml", HOUSE + "marks: {logo: logo.svg}\n")
        name = run("figure", self.path, folder=self.folder).stdout.decode().split()[0]
        self.expect(run("figure", self.path, name, "-o", "logo.svg", folder=self.folder), 3, "it is an input of this run")

    def test_a_folder_that_is_there_may_be_called_anything(self):
        (self.folder / "o.pdf").mkdir()
        self.expect(run("lesson", ".", "-o", "o.pdf", folder=self.folder), 0)
        self.assertTrue((self.folder / "o.pdf" / "BR-01-2026-03-03.pdf").exists())


class WhatTheTableSays(Academy):
    def with_club(self, *names):
        lines = SHOTS.splitlines()
        rows = [lines[0] + ",club"] + [f"{line},{names[i % len(names)]}" for i, line in enumerate(lines[1:])]
        (self.day / "shots.csv").write_text("\n".join(rows) + "\n", encoding="utf-8")

    def test_another_club_than_the_record_s_is_told_with_both_places(self):
        self.with_club("six iron")
        self.check(self.path, 0, "lesson.yaml:2:7: warning: the club is 'seven iron' here, and 'six iron' in shots.csv "
                   "from line 2 on", "correct one of the two")

    def test_the_same_club_in_other_words_is_not(self):
        for name in ("7 iron", "7i", "Seven Iron", "Eisen 7", "my trusty"):
            self.with_club(name)
            self.check(self.path, 0, never=["the club is"])


class FilesInEachOthersPlace(Academy):
    def test_a_table_given_for_its_record_is_told_as_that(self):
        for words in (("check",), ("lesson", "-o", "o.pdf"), ("numbers",)):
            done = run(*words, self.day / "shots.csv", folder=self.folder)
            self.expect(done, 1, "the file is a shot table, and a lesson record is wanted", "name its record")
            self.assertEqual(done.stderr.count("error"), 1)

    def test_a_record_under_nearly_its_name_is_named(self):
        self.check(self.day / "Lesson.yaml", 3, "'lesson.yaml' lies there: write its name letter by letter")
        self.path.rename(self.day / "Lesson.yml")
        self.check(self.path, 3, "'Lesson.yml' lies there: call the file lesson.yaml, letter by letter")
        self.check(self.day / "other.yaml", 3, "such as lesson.yaml", never=["lies there"])

    def test_a_last_lesson_beside_this_one_is_found(self):
        later = self.lesson("BR-01", "2026-03-17")
        self.write(later, "saw:", "last lesson: 2026-03-03\nsaw:")
        self.check(later, 1, "the last lesson '2026-03-03' cannot be read",
                   "hint: it lies one folder up: last lesson: ../2026-03-03")
        self.write(later, "last lesson: ", "last lesson: ../")
        self.check(later, 0)
        self.write(later, "2026-03-03", "2026-03-04")
        self.check(later, 1, "cannot be read", "give the way from this record", never=["one folder up"])


class SmallPaper(InFolder):
    def test_what_the_program_proposes_has_room_on_a5_in_every_language(self):
        for language in ("en-GB", "en-US", "de", "fr", "es", "sv"):
            for more in ("", "drills: [H5]\n", "drills: [S4]\n"):
                record = self.record("lesson.yaml", SMALL_RECORD + f"paper: A5\nlanguage: {language}\n{more}")
                self.assertNotIn("warning", self.expect(run("check", record), 0).stderr)

    def test_two_logs_have_not(self):
        record = self.record("lesson.yaml", SMALL_RECORD + "paper: A5\nlog: 28 days\n")
        done = self.expect(run("lesson", record, "-o", self.folder / "a.pdf"), 1, "a log of 28 days has no room on A5")
        self.assertNotIn("stands over", done.stderr)
        self.assertFalse((self.folder / "a.pdf").exists())
