"""The invented academy: who teaches, who is taught, and what was said in each lesson.

People, places and words are all made up. A lesson is (day, saw, changed, more); `more` may hold
why, hold (before and after), drills, plan, few (shots a block), note, words (of the student, on the log).
"""

HOUSE = """# An invented academy. What stands here holds for every lesson below, unless the student's entry
# in people.yaml or the lesson itself says otherwise.
academy: Hollin Vale Golf School
coaches:
  - {name: Marian Pell, contact: "marian@hollin-vale.example"}
  - {name: Jonas Reuter, contact: "jonas@hollin-vale.example"}
place: Hollin Vale, bays 3 and 4
language: en-GB
paper: A4
units: {distance: yards, speed: mph}
print name: first name

# The usual table: what the bays write. A lesson without such a file is a lesson without shots.
shots: {file: shots.csv, sign: right is positive, set aside: ["ball speed below 80 % of the block median"]}
conditions: {text: "indoors, mat, range balls", height: 95 m, temperature: 16}

# With these a lesson needs no more than 'aim: face'.
aims:
  face: {want: 3 L to 3 R, worth having: 2}
  path: {want: 3 L to 3 R, worth having: 1.5}
  attack: {want: 5 down to 2 down, worth having: 1}

kept for: 24   # months after the last lesson
"""

FULL_BAG = """  bag:
    - {name: five iron, loft: 26, lie: 61.5}
    - {name: six iron, loft: 29, lie: 62}
    - {name: seven iron, loft: 32.5, lie: 62.5}
    - {name: eight iron, loft: 36.5, lie: 63}
    - {name: nine iron, loft: 41, lie: 63.5}
    - {name: pitching wedge, loft: 46, lie: 64}
"""
SHORT_BAG = """  bag:
    - {name: seven iron, loft: 34, lie: 61}
    - {name: nine iron, loft: 42, lie: 62}
    - {name: pitching wedge, loft: 47, lie: 63}
"""
JUNIOR_BAG = """  bag:
    - {name: seven iron, loft: 35, lie: 60}
    - {name: pitching wedge, loft: 48, lie: 61.5}
"""

# code, folder, lines of people.yaml after first name and hand, bag
PEOPLE = [
    ("AD-01", "ada", "Ada", "Fenwick", "right", "send to: ada.fenwick@post.example\n  agreed: 2026-01-07", FULL_BAG),
    ("BE-02", "benedek", "Benedek", "Szabó", "left", "coach: Jonas\n  glove: yes\n  send to: b.szabo@post.example\n  agreed: 2026-01-08", FULL_BAG),
    ("CA-03", "carys", "Carys", "Llewellyn", "right", 'age: junior\n  guardian: {name: "Llewellyn, Huw", address: huw@llewellyn.example}\n  agreed: 2026-01-10\n  kept until: 2027-08-31', JUNIOR_BAG),
    ("DI-04", "dilys", "Dilys", "Marr", "right", "large print: yes\n  send to: dilys.marr@post.example\n  agreed: 2026-01-12", SHORT_BAG),
    ("EM-05", "emre", "Emre", "Aydın", "right", "age: junior\n  coach: Jonas\n  guardian: {name: Selin Aydın, address: selin@aydin.example}\n  agreed: 2026-01-12\n  kept until: 2027-08-31", JUNIOR_BAG),
    ("FR-06", "friederike", "Friederike", "Lohmann", "right", "coach: Jonas\n  language: de\n  units: {distance: metres, speed: km/h}\n  glove: yes\n  send to: f.lohmann@post.example\n  agreed: 2026-01-13", FULL_BAG),
    ("GA-07", "gabriel", "Gabriel", "Okonjo", "left", "age: junior\n  guardian: {name: Ngozi Okonjo, address: ngozi@okonjo.example}\n  agreed: 2026-01-14\n  kept until: 2027-08-31", JUNIOR_BAG),
    ("HA-08", "hannah", "Hannah", "Quist", "right", "glove: yes\n  send to: hannah@quist.example\n  agreed: 2026-01-14", FULL_BAG),
    ("IV-09", "ivo", "Ivo", "Petrič", "right", "coach: Jonas\n  glove: yes\n  send to: ivo@petric.example\n  agreed: 2026-01-15", FULL_BAG),
    ("JO-10", "joan", "Joan", "Tarrant", "right", "large print: yes\n  send to: joan.tarrant@post.example\n  agreed: 2026-01-15", SHORT_BAG),
    ("KI-11", "kit", "Kit", "Marlowe-Devane", "right", "age: junior\n  coach: Jonas\n  guardian: {name: Alex Marlowe-Devane, address: alex@marlowe-devane.example}\n  agreed: 2026-01-16\n  kept until: 2027-08-31", JUNIOR_BAG),
    ("LE-12", "leonie", "Leonie", "Brandt", "right", "send to: leonie@brandt.example\n  agreed: 2026-01-19", FULL_BAG),
    ("MO-13", "mona", "Mona", "Sefton", "right", "coach: Jonas\n  print name: initials\n  send to: mona@sefton.example\n  agreed: 2026-01-20", SHORT_BAG),
    ("NO-14", "noor", "Noor", "van Dalen", "right", "age: junior\n  guardian: {name: Joost van Dalen, address: joost@vandalen.example}\n  agreed: 2026-02-02\n  kept until: 2027-08-31", JUNIOR_BAG),
]

PALM = "{lay: palm, knuckles: 1, V: chin, heel pad: beside, gap: yes, balance: falls}"
BETWEEN = "{lay: between, knuckles: 1.5, heel pad: on top, gap: no}"
FINGERS = "{lay: fingers, knuckles: 2, V: trail eye, heel pad: on top, gap: no, balance: stays}"
STRONG = "{lay: fingers, knuckles: 3.5, V: outside trail shoulder, heel pad: on top, gap: no}"
CALM = "{lay: fingers, knuckles: 2.5, V: trail shoulder, heel pad: on top, gap: no}"

# code: club, aim, start of (face, path, loft, attack, club speed m/s) as a right-hander plays it,
# where it goes, how much of a lesson's change is there again after the days between, lessons
LESSONS = {
    "AD-01": ("seven iron", "face", (8.0, -3.0, 24.2, -3.2, 33.4), (1.0, -2.2), 0.55, [
        ("2026-01-14", "The handle lay deep in your palm and the face came in looking right.",
         "The handle now lies across your fingers.", {"hold": (PALM, FINGERS), "drills": ["H1"],
          "why": "From the palm your hand cannot bring the face back in time. From the fingers it can.",
          "plan": "{when: the news begins, where: beside the sofa, instead: do it three times and go to bed}"}),
        ("2026-01-28", "Half of it came back with you: the pad is on top, the club still slides toward the palm.",
         "We set the pad last and closed the fingers first.", {"hold": (BETWEEN, FINGERS), "drills": ["H4"], "back": ("H1", 9, "right first: 6 of 10"),
          "words": "It felt like holding a bird."}),
        ("2026-02-18", "The face is home on slow swings and opens again when you hurry.",
         "One slow rehearsal before each ball, with the same hold.", {"drills": ["H5"], "back": ("H4", 11, "right first: 5 of 6"),
          "plan": "{when: the kettle goes on, where: in the hall}"}),
    ]),
    "BE-02": ("seven iron", "face", (7.0, -2.0, 24.0, -3.6, 37.2), (0.5, -1.6), 0.7, [
        ("2026-01-15", "Your trail hand did all the holding and the face stayed open.",
         "The lead hand holds now; the trail hand only lies on it.", {"hold": (PALM, FINGERS), "drills": ["H2"],
          "why": "The lead hand sets the face. When it only rests on the club, nobody does."}),
        ("2026-02-05", "The balance on one finger is there every time. The middle of the face is not yet.",
         "Ball half a hand back, everything else as it was.", {"drills": ["F2"], "back": ("H2", 12, "right first: 4 of 5")}),
        ("2026-03-05", "Ten cold shots, and most of them started near the flag.",
         "We left the hold alone and made the finish longer.", {"drills": ["T1"], "back": ("F2", 8, "right first: 6 of 8"),
          "note": "Leave the path alone until he asks."}),
    ]),
    "CA-03": ("seven iron", "face", (6.5, -1.5, 26.5, -2.4, 25.0), (1.5, -1.0), 0.5, [
        ("2026-01-17", "You held the club like a broom.", "The club lies in your fingers now.",
         {"hold": (PALM, FINGERS), "drills": ["H1"], "plan": "{when: I am back from school, where: in the garden}"}),
        ("2026-02-07", "You showed me the line on the glove before I asked.", "Thumb a little shorter, same fingers.",
         {"hold": (BETWEEN, FINGERS), "drills": ["H3"], "back": ("H1", 10, ""), "words": "My brother can do it too."}),
        ("2026-03-07", "The ball starts near the big tree nearly every time.", "We kept all of it and counted five good ones.",
         {"drills": ["H3"], "back": ("H3", 9, "passed: yes")}),
    ]),
    "DI-04": ("seven iron", "face", (9.0, -2.0, 25.0, -2.6, 28.5), (3.0, -1.8), 0.5, [
        ("2026-01-19", "The gap between pad and handle let the club tip over at the top.",
         "The pad lies on top, and the gap is closed.", {"hold": (PALM, FINGERS), "drills": ["H4"],
          "why": "With the gap closed the club stays where you put it, and the wrist has less to do."}),
        ("2026-02-16", "The gap stays closed. The face is nearer and now and then right.",
         "A lighter start and a firmer last moment.", {"drills": ["H7"], "back": ("H4", 8, "right first: 4 of 6")}),
    ]),
    "EM-05": ("seven iron", "face", (-5.5, 2.0, 26.0, -2.0, 27.0), (-1.0, 1.2), 0.6, [
        ("2026-01-20", "Your hand was turned so far that the face came in shut.", "Two and a half knuckles instead of nearly four.",
         {"hold": (STRONG, CALM), "drills": ["H3"]}),
        ("2026-02-10", "You count your knuckles without being told.", "We matched the trail hand to the lead hand.",
         {"hold": (STRONG, CALM), "drills": ["H6"], "back": ("H3", 7, "")}),
        ("2026-03-10", "The ball flies higher, because the face no longer shuts.", "Nothing new: we practised the old.",
         {"drills": ["H6"], "back": ("H6", 9, "passed: yes"), "words": "It goes up now!"}),
    ]),
    "FR-06": ("seven iron", "path", (1.5, -6.0, 24.0, -4.2, 34.0), (0.8, -2.0), 0.55, [
        ("2026-01-21", "Der Schlägerkopf kam von außen und schnitt quer über die Linie.",
         "Der Rücken zeigt länger zum Ziel, die Arme fallen zuerst.", {"drills": ["P1"],
          "why": "Wenn die Arme zuerst fallen, hat der Schläger innen Platz."}),
        ("2026-02-11", "Langsam kommt die Bahn von innen, schnell noch nicht.",
         "Ein Schlägerdeckel außen neben dem Ball zeigt die Bahn.", {"drills": ["P2"], "back": ("P1", 8, "right first: 9 of 15")}),
        ("2026-03-11", "Die Bahn blieb auch kalt fast gerade.", "Gleiche Übung, mit halber Fahrt angefangen.",
         {"drills": ["P2"], "back": ("P2", 10, "right first: 12 of 15")}),
    ]),
    "GA-07": ("seven iron", "face", (6.0, -2.5, 27.0, -1.8, 23.5), (2.0, -2.0), 0.5, [
        ("2026-01-24", "The thumb held the club, and the fingers slept.", "The fingers woke up and the thumb rests.",
         {"hold": (PALM, FINGERS), "drills": ["H1"], "plan": "{when: I have brushed my teeth, where: in my room}"}),
        ("2026-02-21", "The face looks at the target more often than not.", "We stood a little nearer to the ball.",
         {"drills": ["H2"], "back": ("H1", 6, "")}),
    ]),
    "HA-08": ("seven iron", "attack", (1.0, -1.0, 26.5, 0.6, 33.0), (0.5, -0.5), 0.6, [
        ("2026-01-22", "You helped the ball up, and the club met the mat behind it.",
         "The weight is on the lead side before the club comes down.", {"drills": ["S1"],
          "why": "The club lifts the ball by its loft. It needs no help."}),
        ("2026-02-12", "The strike is cleaner; the weight still hangs back when the target looks far.",
         "The lead heel stays down and the chest covers the ball.", {"drills": ["S2"], "back": ("S1", 10, "right first: 10 of 15")}),
        ("2026-03-12", "Cold, and down on the ball from the third shot on.", "We left it and played five different targets.",
         {"drills": ["S2"], "back": ("S2", 12, "right first: 14 of 15")}),
    ]),
    "IV-09": ("six iron", "path", (0.5, -5.5, 21.5, -4.8, 38.0), (0.0, -1.5), 0.6, [
        ("2026-01-23", "The path cut across from outside, and the face had to save it.",
         "The first move is the lead hip, not the shoulder.", {"drills": ["P1"],
          "why": "With the shoulder first there is only the outside left for the club."}),
        ("2026-02-13", "The first three balls were old, the rest new.", "A stick beside the ball shows the way in.",
         {"drills": ["P3"], "back": ("P1", 7, "right first: 9 of 15")}),
    ]),
    "JO-10": ("seven iron", None, None, None, None, [
        ("2026-01-26", "In your film the handle sits in the palm, and the thumb is long.",
         "A shorter thumb, and the handle one finger lower.", {"hold": (PALM, BETWEEN), "drills": ["H1"],
          "why": "We work by film, so the hold is what we can see and keep."}),
        ("2026-02-23", "The second film shows two knuckles and no gap.", "We kept the hold and slowed the start.",
         {"hold": (BETWEEN, FINGERS), "drills": ["H4"], "back": ("H1", 10, "right first: 8 of 10"), "words": "I practise while the soup is on."}),
    ]),
    "KI-11": ("seven iron", "face", (5.0, -1.0, 26.0, -2.4, 26.5), (1.0, -0.8), 0.55, [
        ("2026-01-27", "You squeezed so hard that nothing could move.", "Light at the start, firm at the ball.",
         {"hold": (BETWEEN, FINGERS), "drills": ["H7"]}),
        ("2026-02-17", "Light hands for eight of ten. I counted.", "The same, with your eyes on the ball mark.",
         {"drills": ["H7"], "back": ("H7", 9, "")}),
    ]),
    "LE-12": ("seven iron", "face", (-6.0, 3.0, 23.0, -3.4, 34.5), (-0.5, 2.0), 0.65, [
        ("2026-01-29", "The face shut early and the ball dived left.",
         "The V points at the trail shoulder now, not past it.", {"hold": (STRONG, CALM), "drills": ["H3"],
          "why": "A hand that is turned far shuts the face by itself. Half a knuckle less is enough."}),
        ("2026-02-19", "Left starts are rare; the odd one goes right, and that is fine.",
         "We left the hold and moved the ball half a hand forward.", {"drills": ["F4"], "back": ("H3", 11, "right first: 8 of 10")}),
        ("2026-03-19", "Cold, six of ten started between the posts.", "Full swings with the same start.",
         {"drills": ["F4"], "back": ("F4", 9, "right first: 7 of 10")}),
    ]),
    "MO-13": ("seven iron", "face", (7.5, -2.5, 25.5, -2.8, 29.5), (2.5, -2.0), 0.45, [
        ("2026-01-30", "The pad sat beside the handle, and the face opened on the way down.",
         "The pad lies on top; the little finger closes first.", {"hold": (PALM, FINGERS), "drills": ["H4"]}),
        ("2026-02-27", "Much of the old hold is back: it was a short fortnight.",
         "The same change again, with the pen line on the glove.", {"hold": (BETWEEN, FINGERS), "drills": ["H8"], "back": ("H4", 3, "right first: 2 of 6")}),
        ("2026-03-20", "The line on the glove is worn, and the face shows it.", "We kept the hold and made the swing shorter.",
         {"drills": ["H8"], "back": ("H8", 11, "")}),
    ]),
    "NO-14": ("pitching wedge", "face", (5.0, -1.0, 36.0, -2.2, 21.0), (2.0, -0.8), 0.5, [
        ("2026-02-14", "It was your first lesson, and you hit the ball every time.", "The club lies in the fingers.",
         {"hold": (PALM, BETWEEN), "drills": ["H1"], "few": 4}),
    ]),
}
