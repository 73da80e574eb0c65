// An invented two-sheet book that uses every kind of mark.
#pragma once

#include "page/book.hpp"
#include "text/typesetter.hpp"

page::Book sample_book(const text::Typesetter& setter, ink::Size paper);
