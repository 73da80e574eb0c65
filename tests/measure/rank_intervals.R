# Shift and rank intervals of each sample by R, for sweep_test.cpp.
# Rscript rank_intervals.R SAMPLES RESULTS
# SAMPLES: before;after (values with spaces between), one sample a line.
# RESULTS: how;before;after;estimate;then lower;upper;held for 80, 90 and 95 %.
#   how is wilcox.test (exact, no ties), qwilcox (ties: the same interval read off the sorted
#   differences) or normal (wilcox.test's own approximation).
files <- commandArgs(trailingOnly = TRUE)
levels <- c(0.80, 0.90, 0.95)
numbers <- function(x) paste(sprintf("%.17g", x), collapse = ";")
values <- function(text) as.numeric(strsplit(text, " ")[[1]])
# A hair under the level asked for: where an interval holds it exactly, R would take the next wider one.
hair <- 1e-9

one <- function(before, after, level, how) {
  m <- length(before); n <- length(after)
  q <- max(1, qwilcox((1 - level + hair) / 2, n, m))
  held <- 1 - 2 * pwilcox(q - 1, n, m)
  if (how == "qwilcox") {
    d <- sort(outer(after, before, "-"))
    return(c(d[q], d[m * n - q + 1], held))
  }
  test <- suppressWarnings(wilcox.test(after, before, conf.int = TRUE, conf.level = level - hair,
                                       exact = how == "wilcox.test"))
  c(test$conf.int[1:2], held)
}

line <- function(text) {
  parts <- strsplit(text, ";")[[1]]
  before <- values(parts[1]); after <- values(parts[2])
  tied <- anyDuplicated(c(before, after)) > 0
  small <- length(before) <= 60 && length(after) <= 60
  how <- if (!small) "normal" else if (tied) "qwilcox" else "wilcox.test"
  estimate <- if (how == "wilcox.test") {
    suppressWarnings(wilcox.test(after, before, conf.int = TRUE, exact = TRUE))$estimate
  } else median(outer(after, before, "-"))
  found <- unlist(lapply(levels, function(level) one(before, after, level, how)))
  paste(how, parts[1], parts[2], numbers(estimate), numbers(found), sep = ";")
}

writeLines(vapply(readLines(files[1]), line, "", USE.NAMES = FALSE), files[2])
