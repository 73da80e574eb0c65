"""A PDF as qpdf's JSON shows it: objects, structure tree, content streams. Checks of ISO 14289-1
(PDF/UA-1) that a machine can make; the paragraph stands beside each."""
import json
import re
import subprocess

STANDARD = {"Document", "Part", "Sect", "Div", "BlockQuote", "Caption", "TOC", "TOCI", "P", "H1", "H2", "H3", "L", "LI",
            "Lbl", "LBody", "Table", "THead", "TBody", "TR", "TH", "TD", "Span", "Link", "Figure", "Quote", "Note"}
PAINTS = {b"f", b"F", b"f*", b"B", b"B*", b"b", b"b*", b"S", b"s", b"Tj", b"TJ", b"'", b'"', b"Do", b"sh", b"EI"}
# strings first, so that what looks like an operator inside one is not taken for it
TOKEN = re.compile(rb"\((?:\\.|[^\\()])*\)|<<|>>|<[0-9A-Fa-f\s]*>|\[|\]|/[^\s/<>\[\]()]*|[^\s/<>\[\]()]+")


class PdfFile:
    def __init__(self, path):
        done = subprocess.run(["qpdf", "--json=2", "--json-stream-data=inline", "--decode-level=generalized", str(path)],
                              stdout=subprocess.PIPE, check=True)
        self.objects = {}
        for key, item in json.loads(done.stdout)["qpdf"][1].items():
            if key.startswith("obj:"):
                self.objects[key[4:]] = item
        self.trailer = json.loads(done.stdout)["qpdf"][1]["trailer"]["value"]
        self.root = self.get(self.trailer["/Root"])

    def get(self, value):
        """The object behind a reference, streams as their dictionary."""
        while isinstance(value, str) and value in self.objects:
            item = self.objects[value]
            value = item["value"] if "value" in item else item["stream"]["dict"]
        return value

    def data(self, reference):
        import base64
        return base64.b64decode(self.objects[reference]["stream"]["data"])

    def pages(self):
        out, waiting = [], [self.get(self.root["/Pages"])]
        while waiting:
            node = waiting.pop(0)
            if node["/Type"] == "/Pages":
                waiting = [self.get(kid) for kid in node["/Kids"]] + waiting
            else:
                out.append(node)
        return out

    def kids(self, element):
        kids = self.get(element.get("/K", []))
        return kids if isinstance(kids, list) else [kids]

    def elements(self):
        """(element, its parents' roles) of the whole tree in reading order."""
        def walk(element, above):
            role = element["/S"][1:]
            yield element, above
            for kid in self.kids(element):
                kid = self.get(kid)
                if isinstance(kid, dict) and "/S" in kid:
                    yield from walk(kid, above + [role])
        for kid in self.kids(self.get(self.root["/StructTreeRoot"])):
            yield from walk(self.get(kid), [])

    def faults(self):
        """Every departure from what PDF/UA-1 asks and a machine can see."""
        return (self.document_faults() + self.tree_faults() + self.page_faults() + self.heading_faults()
                + self.table_faults() + self.link_faults())

    def document_faults(self):
        out = []
        if self.get(self.root.get("/MarkInfo", {})).get("/Marked") is not True:
            out.append("not marked as tagged (7.1)")
        if self.get(self.root.get("/ViewerPreferences", {})).get("/DisplayDocTitle") is not True:
            out.append("the title is not shown (7.1)")
        if not self.root.get("/Lang"):
            out.append("no language (7.2)")
        if "/Metadata" not in self.root:
            out.append("no XMP (7.1)")
        return out

    def tree_faults(self):
        out = []
        for element, above in self.elements():
            role = element["/S"][1:]
            if role not in STANDARD:
                out.append(f"role {role} is not a standard one (7.1)")
            if role == "Figure":
                if len(element.get("/Alt", "")) < 4:
                    out.append("a figure says nothing (7.3)")
                box = (self.get(element.get("/A", {})) or {}).get("/BBox")
                if not box or box[0] >= box[2] or box[1] >= box[3]:
                    out.append(f"the figure {element.get('/Alt', '')[:30]} has no box (7.3)")
            parent = {"LI": "L", "Lbl": "LI", "LBody": "LI", "TD": "TR", "TH": "TR"}.get(role)
            if parent and (not above or above[-1] != parent):
                out.append(f"{role} in {above[-1:]} (7.6, 7.5)")
        return out

    def heading_faults(self):
        out, last = [], 0
        for element, _ in self.elements():
            found = re.fullmatch(r"/H([1-6])", element["/S"])
            if not found:
                continue
            level = int(found.group(1))
            if level > last + 1:
                out.append(f"H{level} after H{last} (7.4.2)")
            last = level
        return out

    def table_faults(self):
        out = []
        for element, _ in self.elements():
            if element["/S"] != "/Table":
                continue
            rows = [self.get(k) for k in self.kids(element)]
            rows = [r for r in rows if isinstance(r, dict) and r.get("/S") == "/TR"]
            widths, heads = set(), 0
            for row in rows:
                cells = [self.get(k) for k in self.kids(row)]
                cells = [c for c in cells if isinstance(c, dict) and c.get("/S") in ("/TH", "/TD")]
                widths.add(len(cells))
                for cell in cells:
                    if cell["/S"] == "/TH":
                        heads += 1
                        if "/Scope" not in (self.get(cell.get("/A", {})) or {}):
                            out.append("a head cell without scope (7.5)")
            if len(widths) != 1:
                out.append(f"a table with rows of {sorted(widths)} cells (7.5)")
            if heads == 0:
                out.append("a table without head cells (7.5)")
        return out

    def page_faults(self):
        """Everything painted is inside marked content; every marked content is an artifact or in the tree (7.1)."""
        out = []
        owned = self.owned_content()
        for number, page in enumerate(self.pages(), start=1):
            if page.get("/Annots") and page.get("/Tabs") != "/S":
                out.append(f"page {number}: tab order is not that of the structure (7.18.3)")
            contents = page["/Contents"]
            content = b"\n".join(self.data(c) for c in (contents if isinstance(contents, list) else [contents]))
            marked, depth, previous = set(), 0, []
            for token in TOKEN.findall(content):
                if token in (b"BDC", b"BMC"):
                    depth += 1
                    if depth > 1 and b"/ActualText" in previous:
                        pass  # the letters of a ligature, inside an element
                    elif b"/MCID" in previous[-4:]:
                        marked.add(int(previous[-2]))
                    elif b"/Artifact" not in previous[-3:]:
                        out.append(f"page {number}: marked content is neither in the tree nor an artifact")
                elif token == b"EMC":
                    depth -= 1
                elif token in PAINTS and depth == 0:
                    out.append(f"page {number}: {token.decode()} outside marked content")
                previous = (previous + [token])[-5:]
            if depth != 0:
                out.append(f"page {number}: marked content is not closed")
            lost = marked - owned.get(page.get("/StructParents"), set())
            if lost:
                out.append(f"page {number}: content {sorted(lost)} is not in the tree")
        return out

    def owned_content(self):
        """{StructParents: marked content ids that an element of the tree holds}, by the parent tree."""
        reached = {id(element) for element, _ in self.elements()}
        out = {}
        numbers = self.number_tree(self.get(self.get(self.root["/StructTreeRoot"])["/ParentTree"]))
        for key, value in numbers:
            value = self.get(value)
            if isinstance(value, list):
                out[key] = {i for i, e in enumerate(value) if e is not None and id(self.get(e)) in reached}
        return out

    def number_tree(self, node):
        flat = node.get("/Nums", [])
        out = list(zip(flat[::2], flat[1::2]))
        for kid in node.get("/Kids", []):
            out += self.number_tree(self.get(kid))
        return out

    def link_faults(self):
        out = []
        in_tree = set()
        for element, _ in self.elements():
            if element["/S"] == "/Link":
                for kid in self.kids(element):
                    kid = self.get(kid)
                    if isinstance(kid, dict) and kid.get("/Type") == "/OBJR":
                        in_tree.add(kid["/Obj"])
        for number, page in enumerate(self.pages(), start=1):
            for reference in self.get(page.get("/Annots", [])):
                note = self.get(reference)
                if not note.get("/Contents"):
                    out.append(f"page {number}: a link says nothing (7.18.5)")
                if reference not in in_tree:
                    out.append(f"page {number}: a link is not in the tree (7.18.5)")
        return out
