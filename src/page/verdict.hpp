// The verdict in words, with its count: what the printed rule allows and no more.
#pragma once

#include "page/story.hpp"

#include <string>
#include <vector>

namespace page {

/// The verdict on the aim: a short head and the sentences behind it.
struct VerdictWords {
    std::string head;                   ///< "Changed today."
    std::vector<std::string> sentences; ///< typical values, count, what to make of it
};
VerdictWords verdict_words(const Story& story, const Evidence& aim, const words::Speaker& words);

/// "middle-word" key of a verdict: "changed", "cannot-tell".
std::string verdict_key(measure::Verdict verdict);

/// The aim's evidence, if the aim was measured.
const Evidence* aim_of(const Story& story);

/// Whether a middle shot is told of this block: fewer than three shots stand for themselves.
bool has_typical(const measure::Sample& sample);

/// "face", "club-speed": the part of a words key that names the measure.
std::string key_of(unit::Measure measure);

} // namespace page
