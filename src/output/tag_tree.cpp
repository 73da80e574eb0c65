#include "output/tag_tree.hpp"

#include "output/bounds.hpp"
#include "output/number.hpp"
#include "output/structure.hpp"

namespace output {

namespace {

using Object = QPDFObjectHandle;

/// What a figure says and where it stands, in PDF's coordinates (y up).
struct Figure {
    std::string alternative;
    std::optional<ink::Rect> box;
};

/// The mark that closes the element which mark `open` opens.
std::size_t close_of(const std::vector<ink::Mark>& marks, std::size_t open) {
    int depth = 0;
    for (std::size_t i = open; i < marks.size(); ++i)
        if (const auto* tag = std::get_if<ink::Tag>(&marks[i]))
            if ((depth += tag->opens ? 1 : -1) == 0) return i;
    return marks.size();
}

/// All figures that reach the tree, in the order of their opening.
std::vector<Figure> figures_of(const page::Book& book) {
    std::vector<Figure> out;
    for (const auto& sheet : book.sheets) {
        int artifacts = 0;
        for (std::size_t i = 0; i < sheet.marks.size(); ++i) {
            const auto* tag = std::get_if<ink::Tag>(&sheet.marks[i]);
            if (!tag) continue;
            if (tag->role == "Artifact") artifacts += tag->opens ? 1 : -1;
            if (tag->role != "Figure" || !tag->opens || artifacts != 0) continue;
            auto box = bounds_of(sheet.marks, i + 1, close_of(sheet.marks, i));
            if (box) box->y = sheet.size.height - box->bottom();
            out.push_back({tag->alternative, box});
        }
    }
    return out;
}

bool element(Object kid) { return kid.isDictionary() && kid.hasKey("/S"); }
bool artifact(Object kid) {
    return element(kid) && kid.getKey("/S").getName().substr(1) == artifact_role;
}

class Tree {
  public:
    explicit Tree(std::vector<Figure> figures)
        : figures_(std::move(figures)) {}

    /// The children of `parent` that are no artifacts, each completed.
    Object kids(Object parent, std::size_t row) {
        Object all = parent.getKey("/K"), kept = Object::newArray();
        if (!all.isArray()) all = Object::newArray({all});
        std::size_t rows = 0;
        for (const auto& kid : all.aitems()) {
            if (artifact(kid)) continue;
            if (element(kid)) complete(kid, is(kid, "/TR") ? rows++ : row);
            kept.appendItem(kid);
        }
        return kept;
    }

  private:
    static bool is(Object element, const char* role) {
        return element.getKey("/S").isNameAndEquals(role);
    }

    void complete(Object element, std::size_t row) {
        if (is(element, "/Figure") && next_ < figures_.size()) complete(element, figures_[next_++]);
        if (is(element, "/TH")) element.replaceKey("/A", scope(row));
        if (!element.getKey("/K").isInteger()) element.replaceKey("/K", kids(element, row));
    }

    /// Alternative text and bounding box (ISO 32000-1, 14.9.3 and table 344).
    static void complete(Object element, const Figure& figure) {
        element.replaceKey("/Alt", Object::newUnicodeString(figure.alternative));
        if (!figure.box) return;
        const auto number = [](double x) { return Object::newReal(fixed(x, 2)); };
        auto layout = Object::newDictionary();
        layout.replaceKey("/O", Object::newName("/Layout"));
        layout.replaceKey("/Placement", Object::newName("/Block"));
        layout.replaceKey(
            "/BBox", Object::newArray({number(figure.box->x), number(figure.box->y),
                                       number(figure.box->right()), number(figure.box->bottom())}));
        element.replaceKey("/A", layout);
    }

    /// Heads of the first row stand over columns, all others before rows.
    static Object scope(std::size_t row) {
        auto out = Object::newDictionary();
        out.replaceKey("/O", Object::newName("/Table"));
        out.replaceKey("/Scope", Object::newName(row == 0 ? "/Column" : "/Row"));
        return out;
    }

    std::vector<Figure> figures_;
    std::size_t next_ = 0;
};

void wrap_in_document(QPDF& file, Object root, Object kids) {
    auto document = file.makeIndirectObject(Object::newDictionary());
    document.replaceKey("/Type", Object::newName("/StructElem"));
    document.replaceKey("/S", Object::newName("/Document"));
    document.replaceKey("/P", root);
    for (auto kid : kids.aitems())
        kid.replaceKey("/P", document);
    document.replaceKey("/K", kids);
    root.replaceKey("/K", document);
}

/// The parent tree names the element of each piece of marked content; artifacts have none.
void clear_parents(Object tree) {
    auto numbers = tree.getKey("/Nums");
    for (int i = 1; i < numbers.getArrayNItems(); i += 2) {
        auto parents = numbers.getArrayItem(i);
        if (!parents.isArray()) continue;
        for (int k = 0; k < parents.getArrayNItems(); ++k)
            if (artifact(parents.getArrayItem(k))) parents.setArrayItem(k, Object::newNull());
    }
}

/// "/Private << /MCID 7 >> BDC" becomes "/Artifact BMC". Cairo begins a line with it and breaks no
/// line inside a string with a slash, so that text can not be mistaken for it.
std::string with_artifacts(std::string_view content) {
    static const std::string opening = std::string("\n/") + artifact_role + " << /MCID ";
    std::string out;
    out.reserve(content.size());
    for (std::size_t at = 0;;) {
        const auto found = content.find(opening, at);
        out += content.substr(at, found - at);
        if (found == content.npos) return out;
        out += "\n/Artifact BMC";
        at = std::min(content.find("BDC", found), content.size() - 3) + 3;
    }
}

void mark_artifacts(Object page) {
    page.replaceKey("/Tabs", Object::newName("/S"));
    auto contents = page.getKey("/Contents");
    const auto data = contents.getStreamData(qpdf_dl_generalized);
    const std::string_view old(reinterpret_cast<const char*>(data->getBuffer()), data->getSize());
    contents.replaceStreamData(with_artifacts(old), Object::newNull(), Object::newNull());
}

/// What each link says is read out for it (ISO 14289-1, 7.18.5): its words, else where it leads.
void name_links(Object page, const page::Sheet& sheet) {
    auto notes = page.getKey("/Annots");
    if (!notes.isArray()) return;
    int next = 0;
    for (const auto& mark : sheet.marks) {
        const auto* link = std::get_if<ink::Link>(&mark);
        if (!link || link->target.empty() || next >= notes.getArrayNItems()) continue;
        notes.getArrayItem(next++).replaceKey(
            "/Contents", Object::newUnicodeString(link->says.empty() ? link->target : link->says));
    }
}

} // namespace

void complete_tags(QPDF& file, const page::Book& book) {
    auto catalogue = file.getRoot();
    auto root = catalogue.getKey("/StructTreeRoot");
    if (!root.isDictionary()) return;
    auto marked = Object::newDictionary();
    marked.replaceKey("/Marked", Object::newBool(true));
    catalogue.replaceKey("/MarkInfo", marked);
    clear_parents(root.getKey("/ParentTree"));
    wrap_in_document(file, root, Tree(figures_of(book)).kids(root, 0));
    std::size_t sheet = 0;
    for (auto& page : QPDFPageDocumentHelper(file).getAllPages()) {
        mark_artifacts(page.getObjectHandle());
        name_links(page.getObjectHandle(), book.sheets.at(sheet++));
    }
}

} // namespace output
